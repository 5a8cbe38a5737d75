package club.yearline.api;

import club.yearline.web.Refusal;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A question for a cut-in, as it is posted.
 *
 * @param change key of the change
 * @param variant key of a variant that it cut in in
 * @param series key of the series of the serials
 * @param lo the lowest serial that may be the first new one
 * @param hi the highest serial that may be the first new one
 * @param observations what was seen
 */
@Schema(name = "CutInQuestion")
record CutInAsked(
    @Schema(description = "Key of the change.") String change,
    @Schema(description = "Key of a variant that it cut in in.") String variant,
    @Schema(
            description =
                "Key of the series of the serials; only needed where the variant has several and"
                    + " the serials do not tell.")
        @Nullable String series,
    @Schema(
            description =
                "The lowest serial that may be the first new one, instead of the recorded one.")
        @Nullable String lo,
    @Schema(
            description =
                "The highest serial that may be the first new one, instead of the recorded one.")
        @Nullable String hi,
    @Schema(description = "What was seen; at most 10,000.")
        @Nullable List<Observation> observations) {

  /** The most observations of one question. */
  static final int MOST = 10_000;

  /**
   * What was seen on one airframe.
   *
   * @param serial its serial
   * @param value what was seen
   */
  @Schema(name = "CutInObservation")
  record Observation(
      @Schema(
              description =
                  "Serial as stamped; dashes, spaces, case and leading zeros do not matter.")
          String serial,
      @Schema(description = "`old`, `new`, the key of a value of the feature, or a number.")
          String value) {}

  static CutInAsked read(Body body) {
    body.of("change", "variant", "series", "lo", "hi", "observations");
    CutInAsked asked =
        new CutInAsked(
            body.needed("change"),
            body.needed("variant"),
            body.text("series"),
            body.text("lo"),
            body.text("hi"),
            body.objects(
                "observations",
                (one, index) -> {
                  one.of("serial", "value");
                  return new Observation(one.needed("serial"), one.neededValue("value"));
                }));
    body.refuseFaults();
    if (asked.seen().size() > MOST) {
      throw Refusal.notUnderstood("observations-many", asked.seen().size(), MOST)
          .at("observations", "field.observations-many", MOST);
    }
    return asked;
  }

  List<Observation> seen() {
    return observations == null ? List.of() : observations;
  }
}
