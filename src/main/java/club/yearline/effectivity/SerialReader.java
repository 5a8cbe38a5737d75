package club.yearline.effectivity;

import java.util.Optional;

/** Reads normalised text as a serial of a series. */
final class SerialReader {

  private static final int MAX_DIGITS = 18;
  private static final int FIRST_YEAR = 1903;
  private static final int LAST_YEAR = 2200;

  private SerialReader() {}

  static Optional<Serial> read(Series series, SerialText text) {
    String prefix = series.barePrefix();
    Optional<Serial> whole = readCounted(prefix, text.text());
    if (!series.yearSuffix()) {
      return whole;
    }
    Optional<Serial> counted = readCounted(prefix, withoutYear(text.text()));
    return counted.isPresent() ? counted : whole;
  }

  private static Optional<Serial> readCounted(String prefix, String text) {
    String bare = SerialText.bare(text);
    return bare.startsWith(prefix) ? number(bare.substring(prefix.length())) : Optional.empty();
  }

  private static Optional<Serial> number(String rest) {
    int end = rest.length();
    char suffix = Serial.NO_SUFFIX;
    if (end > 0 && rest.charAt(end - 1) >= 'A' && rest.charAt(end - 1) <= 'Z') {
      suffix = rest.charAt(--end);
    }
    int start = 0;
    while (start < end - 1 && rest.charAt(start) == '0') {
      start++;
    }
    if (end == 0 || end - start > MAX_DIGITS || !allDigits(rest, start, end)) {
      return Optional.empty();
    }
    return Optional.of(new Serial(Long.parseLong(rest, start, end, 10), suffix));
  }

  /** Drops a separator and a year of two or four digits from the end, if they stand there. */
  private static String withoutYear(String text) {
    int digits = text.length();
    while (digits > 0 && isDigit(text.charAt(digits - 1))) {
      digits--;
    }
    boolean parted = digits > 0 && SerialText.isSeparator(text.charAt(digits - 1));
    return parted && isYear(text.substring(digits)) ? text.substring(0, digits - 1) : text;
  }

  private static boolean isYear(String digits) {
    if (digits.length() == 2) {
      return true;
    }
    return digits.length() == 4
        && Integer.parseInt(digits) >= FIRST_YEAR
        && Integer.parseInt(digits) <= LAST_YEAR;
  }

  private static boolean allDigits(String text, int start, int end) {
    for (int i = start; i < end; i++) {
      if (!isDigit(text.charAt(i))) {
        return false;
      }
    }
    return start < end;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }
}
