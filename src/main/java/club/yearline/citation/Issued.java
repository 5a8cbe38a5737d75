package club.yearline.citation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * When something was published, as citation data has it.
 *
 * @param first the year, month and day as far as known; empty where no year is
 * @param last the same at the end of a span; empty where there is none
 * @param season 1 (spring) to 4 (winter); 0 for none
 * @param circa whether it is uncertain or approximate
 * @param literal in words, where numbers do not say it; null otherwise
 */
public record Issued(
    List<Integer> first, List<Integer> last, int season, boolean circa, @Nullable String literal) {

  private static final Pattern PLAIN =
      Pattern.compile("(\\d{4})(?:-(\\d{2}|XX)(?:-(\\d{2}|XX))?)?[?~%]?");
  private static final Pattern DECADE = Pattern.compile("(\\d{3})X[?~%]?");
  private static final int BEFORE_SEASONS = 20;

  public Issued {
    first = List.copyOf(first);
    last = List.copyOf(last);
  }

  /** A day. */
  public static Issued on(LocalDate day) {
    return new Issued(
        List.of(day.getYear(), day.getMonthValue(), day.getDayOfMonth()),
        List.of(),
        0,
        false,
        null);
  }

  /** Reads an EDTF date of a source; null where there is none. What is none stays as written. */
  public static @Nullable Issued read(@Nullable String edtf) {
    if (edtf == null) {
      return null;
    }
    int slash = edtf.indexOf('/');
    if (slash < 0) {
      return single(edtf);
    }
    Issued from = single(edtf.substring(0, slash));
    Issued to = single(edtf.substring(slash + 1));
    return from.isNumbers() && to.isNumbers()
        ? new Issued(from.first(), to.first(), 0, from.circa() || to.circa(), null)
        : words(open(from, edtf.substring(0, slash)) + "–" + open(to, edtf.substring(slash + 1)));
  }

  private static String open(Issued end, String text) {
    return end.isNumbers() ? text : text.equals("..") ? "" : end.say();
  }

  private static Issued single(String text) {
    Matcher plain = PLAIN.matcher(text);
    if (plain.matches()) {
      return numbers(plain, text);
    }
    Matcher decade = DECADE.matcher(text);
    return words(decade.matches() ? decade.group(1) + "0s" : text);
  }

  private static Issued numbers(Matcher date, String text) {
    List<Integer> parts = new ArrayList<>();
    int season = 0;
    for (int i = 1; i <= date.groupCount(); i++) {
      String part = date.group(i);
      if (part == null || part.equals("XX")) {
        break;
      }
      int number = Integer.parseInt(part);
      if (i == 2 && number > BEFORE_SEASONS) {
        season = number - BEFORE_SEASONS;
      } else {
        parts.add(number);
      }
    }
    return new Issued(parts, List.of(), season, text.matches(".*[?~%]"), null);
  }

  private static Issued words(String words) {
    return new Issued(List.of(), List.of(), 0, false, words);
  }

  private boolean isNumbers() {
    return literal == null && season == 0;
  }

  /** The year or years as a text, for formats that know nothing finer. */
  public String say() {
    if (literal != null) {
      return literal;
    }
    String years = first.get(0) + (last.isEmpty() ? "" : "–" + last.get(0));
    return circa ? "ca. " + years : years;
  }

  /** The date as CSL data has it. */
  Map<String, Object> csl() {
    Map<String, Object> date = new LinkedHashMap<>();
    if (literal != null) {
      date.put("literal", literal);
      return date;
    }
    date.put("date-parts", last.isEmpty() ? List.of(first) : List.of(first, last));
    if (season > 0) {
      date.put("season", season);
    }
    if (circa) {
      date.put("circa", true);
    }
    return date;
  }
}
