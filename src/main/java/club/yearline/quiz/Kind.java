package club.yearline.quiz;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a question asks. */
enum Kind {
  /** Which year left the factory with this. */
  WHICH_YEAR,
  /** What changed between two years. */
  WHAT_CHANGED,
  /** In which order things came. */
  ORDER,
  /** Which one does not belong with the others. */
  ODD_ONE,
  /** What one serial left the factory with. */
  SERIAL,
  /** Whether a statement is true, doubtful or false. */
  TRUE_OR_DOUBTFUL;

  private final String code = name().toLowerCase(Locale.ROOT).replace('_', '-');

  /** The word in addresses and keys of texts. */
  String code() {
    return code;
  }

  static Optional<Kind> of(String code) {
    return Arrays.stream(values()).filter(k -> k.code.equals(code)).findFirst();
  }
}
