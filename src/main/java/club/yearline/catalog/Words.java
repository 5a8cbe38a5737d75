package club.yearline.catalog;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Texts as people type them: case, accents, spaces and separators do not count. */
final class Words {

  private static final Pattern MARKS = Pattern.compile("\\p{Mn}+");
  private static final Pattern DASHES = Pattern.compile("[\\p{Pd}\u2212\u2043]");
  private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}\\p{N}\\-./]+");
  private static final Pattern SEPARATORS = Pattern.compile("[-./]+");

  private Words() {}

  /** The words of a text, separators still in them: {@code LA-2B 1966} has two. */
  static List<String> of(String text) {
    List<String> words = new ArrayList<>();
    for (String word : BETWEEN_WORDS.split(fold(text))) {
      if (!squash(word).isEmpty()) {
        words.add(word);
      }
    }
    return words;
  }

  /** The parts of a word between its separators. */
  static List<String> parts(String word) {
    List<String> parts = new ArrayList<>();
    for (String part : SEPARATORS.split(word)) {
      if (!part.isEmpty()) {
        parts.add(part);
      }
    }
    return parts;
  }

  /** The word without separators. */
  static String squash(String word) {
    return SEPARATORS.matcher(word).replaceAll("");
  }

  /** The words run together. */
  static String joined(List<String> words) {
    return squash(String.join("", words));
  }

  private static String fold(String text) {
    String plain = MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD)).replaceAll("");
    return DASHES.matcher(plain.toLowerCase(Locale.ROOT)).replaceAll("-");
  }
}
