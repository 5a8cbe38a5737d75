package club.yearline.effectivity;

import org.jspecify.annotations.Nullable;

/**
 * A place in a variant's production: a year, a serial, or both.
 *
 * @param variant the variant
 * @param year model year or year of manufacture; null where only the serial is known
 * @param series series of the serial; null without a serial
 * @param serial the serial; null where only the year is known
 */
public record Position(
    Variant variant, @Nullable Integer year, @Nullable Series series, @Nullable Serial serial) {

  public Position {
    if ((series == null) != (serial == null)) {
      throw new IllegalArgumentException("A serial and its series go together");
    }
    if (year == null && serial == null) {
      throw new IllegalArgumentException("A position needs a year or a serial");
    }
  }

  /** A year of a variant's production. */
  public static Position of(Variant variant, int year) {
    return new Position(variant, year, null, null);
  }

  /** A serial of a variant's production, in a year that may be unknown. */
  public static Position of(Variant variant, @Nullable Integer year, Series series, Serial serial) {
    return new Position(variant, year, series, serial);
  }

  /** The serial as stamped; null without a serial. */
  public @Nullable String serialText() {
    return series == null || serial == null ? null : series.show(serial);
  }

  boolean isIn(Series other) {
    return series != null && series.key().equals(other.key());
  }
}
