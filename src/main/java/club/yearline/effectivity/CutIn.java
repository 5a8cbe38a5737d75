package club.yearline.effectivity;

import org.jspecify.annotations.Nullable;

/**
 * Where in one variant's production a change takes effect: a window from {@code first} (the first
 * place where the new one is seen) to {@code settled} (from where all have it), on the year axis,
 * the serial axis or both; or {@code atStart}, from the variant's first airframe.
 *
 * @param variant key of the variant it applies to
 * @param atStart from the first airframe of the variant; the rest is then null
 * @param firstYear first year in which the new one is seen
 * @param settledYear first year in which all have it
 * @param series key of the series of the two serials
 * @param firstSerial first serial on which the new one is seen, as stamped
 * @param settledSerial serial from which all have it, as stamped
 */
public record CutIn(
    String variant,
    boolean atStart,
    @Nullable Integer firstYear,
    @Nullable Integer settledYear,
    @Nullable String series,
    @Nullable String firstSerial,
    @Nullable String settledSerial) {

  /** A cut-in from the variant's first airframe. */
  public static CutIn atStart(String variant) {
    return new CutIn(variant, true, null, null, null, null, null);
  }

  /** Whether any end of the window is recorded. */
  public boolean hasEnd() {
    return firstYear != null || settledYear != null || firstSerial != null || settledSerial != null;
  }
}
