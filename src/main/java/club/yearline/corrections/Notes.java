package club.yearline.corrections;

import club.yearline.web.Refusal;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** What people say about corrections: plain text of bounded length. */
@Component
class Notes {

  /** The most characters of a note. */
  static final int LONGEST = 4000;

  /** The text; null where there is none. */
  @Nullable String optional(String typed) {
    String text = typed.replace("\r\n", "\n").strip();
    if (text.codePointCount(0, text.length()) > LONGEST) {
      throw Refusal.unprocessable("note-too-long", LONGEST);
    }
    return text.isEmpty() ? null : text;
  }

  /** The text, which must be there. */
  String required(String typed) {
    String text = optional(typed);
    if (text == null) {
      throw Denials.unready("note-needed");
    }
    return text;
  }
}
