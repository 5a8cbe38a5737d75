package club.yearline.browse;

import club.yearline.web.Phrases;
import org.springframework.stereotype.Component;

/** The texts of the pages about records, from the bundle {@code messages/records}. */
@Component
class RecordTexts {

  private final Phrases phrases;

  RecordTexts(Phrases phrases) {
    this.phrases = phrases;
  }

  /** A text of these pages; arguments are shown as they print, so that 1966 stays 1966. */
  String get(String key, Object... arguments) {
    return message("records." + key, arguments);
  }

  /** A text for one or for several. */
  String count(String key, long count) {
    return phrases.count("records." + key, count);
  }

  /** A text of any bundle. */
  String message(String key, Object... arguments) {
    return phrases.of(key, arguments);
  }
}
