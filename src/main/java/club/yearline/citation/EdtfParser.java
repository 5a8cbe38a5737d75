package club.yearline.citation;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads EDTF level 0 and 1. The grammar is from memory; the tests hold what it was read against.
 */
final class EdtfParser {

  private static final String QUALIFIER = "[?~%]?";
  private static final Pattern DATE =
      Pattern.compile("(-?\\d{4})(?:-(\\d{2})(?:-(\\d{2}))?)?" + QUALIFIER);
  private static final Pattern UNSPECIFIED_YEAR =
      Pattern.compile("(-?)(\\d{2}(?:XX|\\dX))" + QUALIFIER);
  private static final Pattern UNSPECIFIED_PART =
      Pattern.compile("(-?\\d{4})-(?:XX(?:-XX)?|(\\d{2})-XX)" + QUALIFIER);
  private static final Pattern LONG_YEAR = Pattern.compile("Y(-?)([1-9]\\d{4,})" + QUALIFIER);
  private static final Pattern DATE_TIME =
      Pattern.compile(
          "(-?\\d{4}-\\d{2}-\\d{2})T(?:([01]\\d|2[0-3]):[0-5]\\d:[0-5]\\d|24:00:00)"
              + "(?:Z|[+-](?:[01]\\d|2[0-3])(?::[0-5]\\d)?)?");
  private static final int FIRST_SEASON = 21;
  private static final int LAST_SEASON = 24;

  /** The days that one date of a text may mean. */
  private record Span(LocalDate earliest, LocalDate latest) {

    static Span ofYears(int first, int last) {
      return new Span(LocalDate.of(first, 1, 1), LocalDate.of(last, 12, 31));
    }

    static Span of(YearMonth month) {
      return new Span(month.atDay(1), month.atEndOfMonth());
    }
  }

  private EdtfParser() {}

  static Edtf parse(String text) {
    try {
      int slash = text.indexOf('/');
      if (slash >= 0) {
        return interval(text, end(text.substring(0, slash)), end(text.substring(slash + 1)));
      }
      Matcher time = DATE_TIME.matcher(text);
      Span span = date(time.matches() ? time.group(1) : text);
      return new Edtf(text, span.earliest(), span.latest());
    } catch (DateTimeException e) {
      throw new IllegalArgumentException("There is no such day or month: " + text, e);
    }
  }

  /** An end of an interval; null where it is open ({@code ..}) or unknown (empty). */
  private static @Nullable Span end(String text) {
    return text.isEmpty() || text.equals("..") ? null : date(text);
  }

  private static Edtf interval(String text, @Nullable Span start, @Nullable Span end) {
    if (start == null && end == null) {
      throw new IllegalArgumentException("An interval needs a date at one end at least: " + text);
    }
    if (start != null && end != null && start.earliest().isAfter(end.latest())) {
      throw new IllegalArgumentException("The interval ends before it starts: " + text);
    }
    return new Edtf(
        text, start == null ? null : start.earliest(), end == null ? null : end.latest());
  }

  private static Span date(String text) {
    Matcher date = DATE.matcher(text);
    if (date.matches()) {
      return precise(year(date.group(1)), date.group(2), date.group(3));
    }
    Matcher unspecified = UNSPECIFIED_YEAR.matcher(text);
    if (unspecified.matches()) {
      return unspecifiedYear(unspecified.group(1), unspecified.group(2));
    }
    Matcher part = UNSPECIFIED_PART.matcher(text);
    if (part.matches()) {
      int year = year(part.group(1));
      return part.group(2) == null
          ? Span.ofYears(year, year)
          : Span.of(YearMonth.of(year, Integer.parseInt(part.group(2))));
    }
    return longYear(text);
  }

  private static Span precise(int year, @Nullable String month, @Nullable String day) {
    if (month == null) {
      return Span.ofYears(year, year);
    }
    int number = Integer.parseInt(month);
    if (day != null) {
      LocalDate exact = LocalDate.of(year, number, Integer.parseInt(day));
      return new Span(exact, exact);
    }
    boolean season = number >= FIRST_SEASON && number <= LAST_SEASON;
    return season ? Span.ofYears(year, year) : Span.of(YearMonth.of(year, number));
  }

  private static Span unspecifiedYear(String sign, String digits) {
    int low = Integer.parseInt(digits.replace('X', '0'));
    int high = Integer.parseInt(digits.replace('X', '9'));
    return sign.isEmpty() ? Span.ofYears(low, high) : Span.ofYears(-high, -low);
  }

  /** A year of five digits or more; beyond what a calendar here holds, the last year it holds. */
  private static Span longYear(String text) {
    Matcher matcher = LONG_YEAR.matcher(text);
    if (!matcher.matches()) {
      throw new IllegalArgumentException("Not an EDTF level 1 date: " + text);
    }
    String digits = matcher.group(2);
    int year = digits.length() > 9 ? Year.MAX_VALUE : Integer.parseInt(digits);
    return matcher.group(1).isEmpty() ? Span.ofYears(year, year) : Span.ofYears(-year, -year);
  }

  private static int year(String text) {
    if (text.equals("-0000")) {
      throw new IllegalArgumentException("Year 0 has no sign");
    }
    return Integer.parseInt(text);
  }
}
