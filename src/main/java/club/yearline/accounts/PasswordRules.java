package club.yearline.accounts;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which passwords are taken: long enough, not among the commonest, not one's own name. Nothing is
 * asked about what letters or signs they are made of.
 */
final class PasswordRules {

  /** Where the password is the only factor. */
  static final int ALONE = 15;

  /** Beside a second factor. */
  static final int BESIDE = 8;

  /** Long enough for any sentence; a bound, because hashing costs by length. */
  static final int LONGEST = 256;

  /** What is left of a password without its owner's names must be worth guessing. */
  private static final int REST = 6;

  private static final int SHORTEST_NAME = 3;

  /** A pattern of so few characters, repeated, is no password. */
  private static final int SHORT_PATTERN = 4;

  private static final Pattern EDGES = Pattern.compile("^[^\\p{L}]+|[^\\p{L}]+$");
  private static final Pattern WORD_ENDS = Pattern.compile("[^\\p{L}\\p{N}]+");

  private static final Set<String> COMMON = common();

  private PasswordRules() {}

  /**
   * What is wrong with a password, as the key of a message.
   *
   * @param shortest how many characters it must have
   * @param names names of its owner and of the club
   */
  static Optional<String> fault(String password, int shortest, Collection<String> names) {
    String text = Normalizer.normalize(password, Normalizer.Form.NFKC);
    int length = text.codePointCount(0, text.length());
    if (length < shortest) {
      return Optional.of(shortest == ALONE ? "password.short" : "password.short-beside");
    }
    if (length > LONGEST) {
      return Optional.of("password.long");
    }
    String lower = text.toLowerCase(Locale.ROOT);
    if (isCommon(lower) || isPattern(lower)) {
      return Optional.of("password.common");
    }
    return isMadeOf(lower, names) ? Optional.of("password.name") : Optional.empty();
  }

  /** On the list, or on it but for numbers and signs around it. */
  private static boolean isCommon(String lower) {
    return COMMON.contains(lower) || COMMON.contains(EDGES.matcher(lower).replaceAll(""));
  }

  /** A short pattern or a common password over and over, or a row such as 12345678. */
  private static boolean isPattern(String lower) {
    String unit = unit(lower);
    boolean repeats = unit.length() < lower.length();
    return repeats && (unit.length() <= SHORT_PATTERN || isCommon(unit)) || isRow(lower);
  }

  private static String unit(String text) {
    return text.substring(0, (text + text).indexOf(text, 1));
  }

  private static boolean isRow(String text) {
    int step = text.charAt(1) - text.charAt(0);
    for (int i = 1; i < text.length(); i++) {
      int move = text.charAt(i) - text.charAt(i - 1);
      boolean turnsOver = Math.abs(move) == 9 && Character.isDigit(text.charAt(i));
      if (move != step && !turnsOver) {
        return false;
      }
    }
    return Math.abs(step) <= 1;
  }

  private static boolean isMadeOf(String lower, Collection<String> names) {
    String rest = lower;
    for (String word : words(names)) {
      rest = rest.replace(word, "");
    }
    // A password of signs alone is nobody's name.
    return rest.length() < lower.length() && WORD_ENDS.matcher(rest).replaceAll("").length() < REST;
  }

  private static Set<String> words(Collection<String> names) {
    return Stream.concat(Stream.of("yearline", "password"), names.stream())
        .flatMap(name -> Arrays.stream(WORD_ENDS.split(name.toLowerCase(Locale.ROOT))))
        .filter(word -> word.length() >= SHORTEST_NAME)
        .collect(Collectors.toSet());
  }

  /** The list of common passwords that comes with nbvcxz, commonest first. */
  private static Set<String> common() {
    try (InputStream in = PasswordRules.class.getResourceAsStream("/dictionaries/passwords.txt")) {
      if (in == null) {
        throw new IllegalStateException("The list of common passwords is missing");
      }
      return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
          .lines()
          .map(line -> line.strip().toLowerCase(Locale.ROOT))
          .filter(line -> !line.isEmpty())
          .collect(Collectors.toUnmodifiableSet());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
