package club.yearline.compare;

import java.util.Locale;

/** Why a figure cannot be used. */
enum Missing {
  /** The catalogue has no such feature, or had none at the revision read. */
  NO_FEATURE,
  /** Nothing says anything about it for this variant. */
  NOT_OF_VARIANT,
  /** Nothing is recorded for this year or these serials. */
  UNRECORDED,
  /** Some airframes have a figure; for others of the same year nothing is recorded. */
  PARTLY,
  /** It is recorded as something else than a number of a unit that fits. */
  WRONG_UNIT,
  /** It is recorded as zero or less. */
  NOT_POSITIVE;

  /** The end of its message's key. */
  String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
