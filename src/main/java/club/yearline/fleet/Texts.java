package club.yearline.fleet;

import club.yearline.web.Refusal;
import java.text.Normalizer;
import org.jspecify.annotations.Nullable;

/** Plain texts of bounded length, as people type them. */
final class Texts {

  private Texts() {}

  /**
   * The text without the space around it; null where there is none.
   *
   * @param field name of the form's field, by which it is at fault
   * @throws Refusal if it has more characters than it may
   */
  static @Nullable String optional(@Nullable String typed, String field, int longest) {
    if (typed == null || typed.isBlank()) {
      return null;
    }
    // The database takes every sign but this one.
    String text =
        Normalizer.normalize(typed, Normalizer.Form.NFC)
            .replace("\0", "")
            .replace("\r\n", "\n")
            .strip();
    int length = text.codePointCount(0, text.length());
    if (length > longest) {
      throw Refusal.unprocessable("fleet-too-long", length, longest)
          .at(field, "fleet.fault.too-long", length, longest);
    }
    return text.isEmpty() ? null : text;
  }
}
