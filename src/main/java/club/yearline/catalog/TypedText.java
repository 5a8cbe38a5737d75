package club.yearline.catalog;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A typed text in one way of reading it: a name, and perhaps a year.
 *
 * @param words the words of the name
 * @param year the year, or its last two digits; null where the text is read as a name alone
 */
record TypedText(List<String> words, @Nullable Integer year) {

  private static final int FIRST_YEAR = 1903;
  private static final int LAST_YEAR = 2200;
  private static final Pattern YEAR = Pattern.compile("\\d{4}|\\d{2}");
  private static final Pattern TRAILING = Pattern.compile("(.+)[-./](\\d{4})");
  private static final Pattern LEADING = Pattern.compile("(\\d{4})[-./](.+)");

  TypedText {
    words = List.copyOf(words);
  }

  /** Every way to read a text: as a name alone, and for each word that may be a year, with it. */
  static List<TypedText> readings(String text) {
    List<String> words = Words.of(text);
    List<TypedText> readings = new ArrayList<>();
    for (int i = words.size() - 1; i >= 0; i--) {
      addWithYear(words, i, readings);
    }
    readings.add(new TypedText(words, null));
    return readings;
  }

  /** Whether the year is given by its last two digits only. */
  boolean shortYear() {
    return year != null && year < 100;
  }

  /** The whole name, run together. */
  String name() {
    return Words.joined(words);
  }

  private static void addWithYear(List<String> words, int at, List<TypedText> readings) {
    String word = words.get(at);
    if (isYear(word)) {
      readings.add(new TypedText(without(words, at, null), Integer.valueOf(word)));
      return;
    }
    Matcher trailing = TRAILING.matcher(word);
    Matcher leading = LEADING.matcher(word);
    if (trailing.matches() && isYear(trailing.group(2))) {
      readings.add(
          new TypedText(without(words, at, trailing.group(1)), Integer.valueOf(trailing.group(2))));
    } else if (leading.matches() && isYear(leading.group(1))) {
      readings.add(
          new TypedText(without(words, at, leading.group(2)), Integer.valueOf(leading.group(1))));
    }
  }

  private static boolean isYear(String word) {
    if (!YEAR.matcher(word).matches()) {
      return false;
    }
    int number = Integer.parseInt(word);
    return word.length() == 2 || (FIRST_YEAR <= number && number <= LAST_YEAR);
  }

  private static List<String> without(List<String> words, int at, @Nullable String instead) {
    List<String> rest = new ArrayList<>(words);
    rest.remove(at);
    if (instead != null) {
      rest.add(at, instead);
    }
    return rest;
  }
}
