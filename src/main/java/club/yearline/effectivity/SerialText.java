package club.yearline.effectivity;

import java.util.Locale;

/**
 * A text that may be a serial, normalised for reading: trimmed, upper-case, every Unicode dash as
 * {@code -}, no spaces.
 *
 * @param text the normalised text
 */
public record SerialText(String text) {

  /** The longest text that is read, in characters as typed. */
  public static final int MAX_LENGTH = 40;

  private static final String OTHER_DASHES = "\u2043\u2053\u207B\u208B\u2212";

  /**
   * Normalises a typed text.
   *
   * @throws IllegalArgumentException if it has more than {@value #MAX_LENGTH} characters
   */
  public static SerialText of(String typed) {
    String trimmed = typed.strip();
    if (trimmed.length() > MAX_LENGTH) {
      throw new IllegalArgumentException(
          "A serial has at most " + MAX_LENGTH + " characters; this text has " + trimmed.length());
    }
    StringBuilder out = new StringBuilder(trimmed.length());
    for (char c : trimmed.toUpperCase(Locale.ROOT).toCharArray()) {
      if (isDash(c)) {
        out.append('-');
      } else if (!Character.isWhitespace(c) && !Character.isSpaceChar(c)) {
        out.append(c);
      }
    }
    return new SerialText(out.toString());
  }

  /** The text without the separators {@code -}, {@code .}, {@code /} and space. */
  public String bare() {
    return bare(text);
  }

  static String bare(String text) {
    StringBuilder out = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      if (!isSeparator(text.charAt(i))) {
        out.append(text.charAt(i));
      }
    }
    return out.toString();
  }

  static boolean isSeparator(char c) {
    return c == '-' || c == '.' || c == '/' || c == ' ';
  }

  /** Dash punctuation, and the dashes that Unicode counts as mathematical signs or bullets. */
  private static boolean isDash(char c) {
    return Character.getType(c) == Character.DASH_PUNCTUATION || OTHER_DASHES.indexOf(c) >= 0;
  }
}
