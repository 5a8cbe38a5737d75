package club.yearline.browse;

import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/** The texts of the pages about records, from the bundle {@code messages/records}. */
@Component
class RecordTexts {

  private final MessageSource messages;

  RecordTexts(MessageSource messages) {
    this.messages = messages;
  }

  /** A text of these pages; arguments are shown as they print, so that 1966 stays 1966. */
  String get(String key, Object... arguments) {
    return message("records." + key, arguments);
  }

  /** A text for one or for several. */
  String count(String key, long count) {
    return get(key + (count == 1 ? ".one" : ".many"), count);
  }

  /** A text of any bundle. */
  String message(String key, Object... arguments) {
    Object[] texts = new Object[arguments.length];
    for (int i = 0; i < texts.length; i++) {
      texts[i] = String.valueOf(arguments[i]);
    }
    return messages.getMessage(key, texts, LocaleContextHolder.getLocale());
  }
}
