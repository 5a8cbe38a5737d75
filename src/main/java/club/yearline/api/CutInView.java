package club.yearline.api;

import club.yearline.effectivity.Serial;
import club.yearline.effectivity.Series;
import club.yearline.estimation.Bounds;
import club.yearline.estimation.Estimate;
import club.yearline.estimation.Gathered;
import club.yearline.estimation.LeftOut;
import club.yearline.estimation.Suspect;
import club.yearline.estimation.WindowStretches;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * Where a change cut in.
 *
 * @param candidates the serials of which one may be the first new one
 * @param airframes how many airframes count
 * @param models the chance of each model
 * @param bayesFactor how much likelier a clean cut-in makes what was seen than a window
 * @param clean where a clean cut-in lies
 * @param window where a window begins and ends
 * @param exchanged airframes whose value contradicts where they stand
 * @param leftOut how many observations do not count, and why
 */
@Schema(name = "CutInEstimate")
record CutInView(
    int revision,
    String change,
    String variant,
    String series,
    @Schema(description = "The serials of which one may be the first new one.") Stretch candidates,
    @Schema(description = "How many airframes count.") int airframes,
    Models models,
    @Schema(
            description =
                "How much likelier a cut-in at one serial makes what was seen than a window; not"
                    + " there for one candidate only, or where it is too great or small to write.")
        @Nullable Double bayesFactor,
    @Schema(description = "The same as its decimal logarithm.") @Nullable Double log10BayesFactor,
    Clean clean,
    @Schema(description = "Not there where there is only one candidate.") @Nullable Window window,
    @Schema(description = "Probably exchanged parts.") List<Exchanged> exchanged,
    LeftOutView leftOut,
    String caution) {

  /** Serials, first to last. */
  @Schema(name = "SerialStretch")
  record Stretch(String first, String last) {

    static Stretch of(Series series, Bounds range) {
      return new Stretch(
          series.show(Serial.of(range.first())), series.show(Serial.of(range.last())));
    }

    static List<Stretch> all(Series series, List<Bounds> ranges) {
      return ranges.stream().map(r -> of(series, r)).toList();
    }
  }

  /** The chance that it cut in at one serial, and that old and new overlapped. */
  record Models(double clean, double window) {}

  /**
   * A cut-in at one serial.
   *
   * @param mostProbable the stretch of greatest density; of several, the lowest
   * @param asProbable the others
   * @param credible95 the stretches that hold it with a chance of 95 %
   */
  @Schema(name = "CleanCutIn")
  record Clean(
      Stretch mostProbable,
      @Schema(description = "Further stretches of the same density.") List<Stretch> asProbable,
      List<Stretch> credible95) {}

  /** A transition: the most probable first new ones, and from where all are new. */
  @Schema(name = "CutInWindow")
  record Window(Stretch first, Stretch settled) {

    static Window of(Series series, WindowStretches window) {
      return new Window(Stretch.of(series, window.first()), Stretch.of(series, window.settled()));
    }
  }

  /**
   * An airframe whose value contradicts where it stands.
   *
   * @param value old or new
   * @param chance the chance that it does
   */
  @Schema(name = "ExchangedPart")
  record Exchanged(
      String serial, @Schema(allowableValues = {"old", "new"}) String value, double chance) {

    static Exchanged of(Suspect suspect) {
      return new Exchanged(
          suspect.sighting().airframe(),
          suspect.sighting().isNew() ? "new" : "old",
          suspect.chance());
    }
  }

  /** How many observations do not count: a later one does; the value tells nothing. */
  @Schema(name = "LeftOut")
  record LeftOutView(
      @Schema(description = "A later one of the same airframe counts.") int superseded,
      @Schema(description = "The value was offered before the change and after it.") int both,
      @Schema(description = "The value was offered neither before nor after.") int neither) {

    static LeftOutView of(Gathered gathered) {
      return new LeftOutView(
          gathered.leftOut(LeftOut.SUPERSEDED),
          gathered.leftOut(LeftOut.BOTH),
          gathered.leftOut(LeftOut.NEITHER));
    }
  }

  static CutInView of(int revision, CutInCase asked, Estimate estimate, String caution) {
    Series series = asked.question().series();
    OptionalDouble log = estimate.logBayesFactor();
    return new CutInView(
        revision,
        asked.change().key(),
        asked.variant().key(),
        series.key(),
        Stretch.of(series, estimate.candidates()),
        estimate.sightings().size(),
        new Models(estimate.cleanChance(), estimate.windowChance()),
        log.isPresent() ? written(Math.exp(log.getAsDouble())) : null,
        log.isPresent() ? Double.valueOf(log.getAsDouble() / Math.log(10)) : null,
        clean(series, estimate),
        estimate.window().map(w -> Window.of(series, w)).orElse(null),
        estimate.suspects().stream().map(Exchanged::of).toList(),
        LeftOutView.of(asked.gathered()),
        caution);
  }

  /** A factor beyond the numbers that programs hold is no number. */
  private static @Nullable Double written(double factor) {
    return factor > Double.MIN_NORMAL && factor < Double.MAX_VALUE ? Double.valueOf(factor) : null;
  }

  private static Clean clean(Series series, Estimate estimate) {
    List<Stretch> densest = Stretch.all(series, estimate.densest());
    return new Clean(
        densest.get(0),
        densest.subList(1, densest.size()),
        Stretch.all(series, estimate.credible()));
  }
}
