package club.yearline.browse;

import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/** Texts of the reading pages that views put together; each argument is shown as it prints. */
@Component
class Words {

  private final MessageSource messages;

  Words(MessageSource messages) {
    this.messages = messages;
  }

  String say(String key, Object... arguments) {
    Object[] texts = new Object[arguments.length];
    for (int i = 0; i < texts.length; i++) {
      texts[i] = String.valueOf(arguments[i]);
    }
    return text("browse." + key, texts);
  }

  /** One of two texts, by number: {@code key.one} or {@code key.many}. */
  String count(String key, int number) {
    return say(key + (number == 1 ? ".one" : ".many"), number);
  }

  /** The word of a mark, for lists so long that a fragment for each mark would slow them. */
  String mark(String code) {
    return text("mark." + code);
  }

  /** The words of a grade of evidence. */
  String grade(String code) {
    return text("mark.grade", text("mark.grade." + code));
  }

  private String text(String key, Object... texts) {
    return messages.getMessage(key, texts, LocaleContextHolder.getLocale());
  }
}
