package club.yearline.catalog;

import java.util.Locale;

/** How a typed text fits what it may mean; declared from best to worst. */
public enum Closeness {
  /** It is the whole serial, designation or name, but for case, spaces and hyphens. */
  EXACT,
  /** Each word typed is a word of the name. */
  WORDS,
  /** Each word typed begins a word of the name, or is one. */
  BEGINNING,
  /** It names a variant or family that was not produced in the year typed beside it. */
  OTHER_YEAR,
  /** Some word typed is a slip of the pen away, or was left aside. */
  NEAR;

  private final String code = name().toLowerCase(Locale.ROOT).replace('_', '-');

  /** The word used in the API. */
  public String code() {
    return code;
  }

  /** Whether it would be a guess to take it for what was meant. */
  public boolean isGuess() {
    return this == OTHER_YEAR || this == NEAR;
  }

  /** The worse of two. */
  Closeness orWorse(Closeness other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
