package club.yearline.effectivity;

/**
 * A serial number inside its series: the number its digits form and at most one letter. Ordered by
 * ordinal, then no suffix before {@code A} before {@code B}. Serials of different series are never
 * compared.
 *
 * @param ordinal 0 to 999 999 999 999 999 999
 * @param suffix {@code A} to {@code Z}, or {@link #NO_SUFFIX}
 */
public record Serial(long ordinal, char suffix) implements Comparable<Serial> {

  /** The suffix of a serial without a letter. */
  public static final char NO_SUFFIX = 0;

  /** The largest ordinal: 18 digits. */
  public static final long MAX_ORDINAL = 999_999_999_999_999_999L;

  public Serial {
    if (ordinal < 0 || ordinal > MAX_ORDINAL + 1) {
      throw new IllegalArgumentException("Ordinal " + ordinal + " is outside 0 to " + MAX_ORDINAL);
    }
    if (suffix != NO_SUFFIX && (suffix < 'A' || suffix > 'Z')) {
      throw new IllegalArgumentException("Suffix '" + suffix + "' is not a letter A to Z");
    }
  }

  /** A serial without a letter. */
  public static Serial of(long ordinal) {
    return new Serial(ordinal, NO_SUFFIX);
  }

  @Override
  public int compareTo(Serial other) {
    int byOrdinal = Long.compare(ordinal, other.ordinal);
    return byOrdinal != 0 ? byOrdinal : Character.compare(suffix, other.suffix);
  }

  boolean isBelow(Serial other) {
    return compareTo(other) < 0;
  }

  /** The least serial above this one: {@code 412}, {@code 412A} … {@code 412Z}, {@code 413}. */
  Serial next() {
    if (suffix == NO_SUFFIX) {
      return new Serial(ordinal, 'A');
    }
    return suffix == 'Z' ? of(ordinal + 1) : new Serial(ordinal, (char) (suffix + 1));
  }

  /**
   * The last serial worth naming before this one: lettered serials are so rare that a stretch which
   * ends before 413 is shown as ending at 412.
   */
  Serial lastNamedBefore() {
    if (suffix == NO_SUFFIX) {
      return of(ordinal - 1);
    }
    return suffix == 'A' ? of(ordinal) : new Serial(ordinal, (char) (suffix - 1));
  }

  /** The least ordinal whose plain serial is not below this one. */
  long plainFloor() {
    return suffix == NO_SUFFIX ? ordinal : ordinal + 1;
  }

  @Override
  public String toString() {
    return suffix == NO_SUFFIX ? Long.toString(ordinal) : Long.toString(ordinal) + suffix;
  }
}
