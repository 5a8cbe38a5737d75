package club.yearline.estimation;

import club.yearline.effectivity.Serial;

/**
 * A range of ordinals of one series, both ends included.
 *
 * @param first its first ordinal
 * @param last its last ordinal
 */
public record Bounds(long first, long last) {

  public Bounds {
    if (first < 0 || last > Serial.MAX_ORDINAL + 1) {
      throw new IllegalArgumentException(
          "Ordinals from " + first + " to " + last + " are outside those of any series");
    }
    if (last < first) {
      throw new IllegalArgumentException("A range from " + first + " cannot end at " + last);
    }
  }

  /** How many ordinals it holds. */
  public long size() {
    return last - first + 1;
  }

  /** Whether it holds an ordinal. */
  public boolean holds(long ordinal) {
    return first <= ordinal && ordinal <= last;
  }
}
