package club.yearline.exchange;

import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;

/** The module's texts for people, from its message bundle. */
final class Texts {

  private static final ResourceBundle BUNDLE =
      ResourceBundle.getBundle("messages/exchange", Locale.ROOT);

  /** How much of a faulty value is repeated. */
  private static final int ECHO = 60;

  /** No text names more things than this. */
  private static final int MOST_ARGUMENTS = 3;

  private Texts() {}

  /** The text of a key; arguments are shown as they print. */
  static String of(String key, Object... arguments) {
    Object[] texts = new Object[arguments.length];
    for (int i = 0; i < texts.length; i++) {
      texts[i] = String.valueOf(arguments[i]);
    }
    return new MessageFormat(BUNDLE.getString(key), Locale.ROOT).format(texts);
  }

  /** A problem in one line: how grave, where, the value, and what to do. */
  static String of(PackageProblem problem) {
    String value = problem.value() == null ? "" : '"' + shortened(problem.value()) + "\" - ";
    return level(problem) + " " + place(problem) + ": " + value + what(problem);
  }

  private static String level(PackageProblem problem) {
    return of("level." + problem.level().code());
  }

  /** What a problem is and what to do about it, without its place. */
  static String what(PackageProblem problem) {
    List<String> arguments = new ArrayList<>(problem.arguments());
    while (arguments.size() < MOST_ARGUMENTS) {
      // Some findings name more in one case than in another.
      arguments.add("");
    }
    return of("problem." + problem.code(), arguments.toArray()).strip();
  }

  private static String place(PackageProblem problem) {
    if (problem.line() == null) {
      return problem.column() == null
          ? of("place.file", problem.file())
          : of("place.column-of-file", problem.file(), problem.column());
    }
    return problem.column() == null
        ? of("place.line", problem.file(), problem.line())
        : of("place.column", problem.file(), problem.line(), problem.column());
  }

  private static String shortened(String value) {
    String line = value.replace("\n", "\\n").replace("\r", "\\r");
    return line.length() <= ECHO ? line : line.substring(0, ECHO) + "…";
  }
}
