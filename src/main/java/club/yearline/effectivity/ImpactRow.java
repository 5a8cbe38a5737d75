package club.yearline.effectivity;

import org.jspecify.annotations.Nullable;

/**
 * Adjacent positions whose answer differs in the same way between two states of a catalogue.
 *
 * @param kind in what way it differs
 * @param variant the variant
 * @param feature the feature
 * @param firstYear earliest year of the positions; null where their blocks have none
 * @param lastYear latest year, inclusive
 * @param series the series of the serials; null for years without blocks
 * @param firstSerial first serial, inclusive
 * @param lastSerial last serial, inclusive
 * @param airframesBefore airframes in the stretch by the earlier state's blocks
 * @param airframesAfter airframes in the stretch by the later state's blocks
 * @param before the answer in the earlier state; null where the position or, at it, the feature did
 *     not exist
 * @param after the answer in the later state; null likewise
 */
public record ImpactRow(
    Kind kind,
    Variant variant,
    Feature feature,
    @Nullable Integer firstYear,
    @Nullable Integer lastYear,
    @Nullable Series series,
    @Nullable Serial firstSerial,
    @Nullable Serial lastSerial,
    double airframesBefore,
    double airframesAfter,
    @Nullable Answer before,
    @Nullable Answer after) {

  /** In what way an answer differs. */
  public enum Kind {
    /** Another state or other offerings. */
    CHANGED,
    /** The same outcome on other evidence: grade, dispute or retrofits. */
    EVIDENCE_ONLY,
    /** The position exists in the later state only. */
    APPEARS,
    /** The position exists in the earlier state only. */
    DISAPPEARS;

    private final String code = Codes.of(this);

    /** The word used in files, addresses and the API. */
    public String code() {
      return code;
    }

    /** The kind of the same row with before and after exchanged. */
    Kind mirrored() {
      return switch (this) {
        case APPEARS -> DISAPPEARS;
        case DISAPPEARS -> APPEARS;
        default -> this;
      };
    }
  }

  /** The same row with before and after exchanged. */
  public ImpactRow mirrored() {
    return new ImpactRow(
        kind.mirrored(),
        variant,
        feature,
        firstYear,
        lastYear,
        series,
        firstSerial,
        lastSerial,
        airframesAfter,
        airframesBefore,
        after,
        before);
  }
}
