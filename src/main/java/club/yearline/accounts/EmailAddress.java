package club.yearline.accounts;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * An e-mail address that mail can be sent to without harm: no line ends, no second address, no name
 * beside it.
 *
 * @param text as typed
 */
record EmailAddress(String text) {

  static final int LONGEST = 254;

  private static final Pattern FORM =
      Pattern.compile("[\\p{L}\\p{N}.!#$%&'*+/=?^_`{|}~-]{1,64}@[\\p{L}\\p{N}.-]{1,253}");

  /** Reads an address; empty if it is none. */
  static Optional<EmailAddress> of(@Nullable String typed) {
    String text = typed == null ? "" : typed.strip();
    return text.length() <= LONGEST && FORM.matcher(text).matches() && !text.contains("..")
        ? Optional.of(new EmailAddress(text))
        : Optional.empty();
  }

  /** What tells accounts apart: capitals do not. */
  String key() {
    return text.toLowerCase(Locale.ROOT);
  }
}
