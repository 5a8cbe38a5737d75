package club.yearline.news;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How a person wants to get messages by mail. */
enum MailWish {
  NONE,
  /** Each message by itself, at once. */
  EACH,
  /** What came in a day, together, on the next morning. */
  DAILY;

  /** The word used in forms. */
  String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  static Optional<MailWish> of(String code) {
    return Arrays.stream(values()).filter(wish -> wish.code().equals(code)).findFirst();
  }
}
