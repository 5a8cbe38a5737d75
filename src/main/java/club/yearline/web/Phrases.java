package club.yearline.web;

import java.util.Arrays;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/** The texts of the message bundles, for views that are built before the template. */
@Component
public class Phrases {

  private final MessageSource messages;

  /** Phrases of the given bundles. */
  public Phrases(MessageSource messages) {
    this.messages = messages;
  }

  /** A text; its arguments are shown as they print, so that the year 1966 stays 1966. */
  public String of(String key, @Nullable Object... arguments) {
    Object[] texts = Arrays.stream(arguments).map(Objects::toString).toArray();
    return messages.getMessage(
        key, texts.length == 0 ? null : texts, LocaleContextHolder.getLocale());
  }

  /** A text about a number of things: {@code KEY.one} or {@code KEY.many}. */
  public String count(String key, long number, @Nullable Object... more) {
    Object[] arguments = new Object[more.length + 1];
    arguments[0] = number;
    System.arraycopy(more, 0, arguments, 1, more.length);
    return of(key + (number == 1 ? ".one" : ".many"), arguments);
  }

  /** The text of a key that need not exist. */
  public String orElse(String key, String otherwise) {
    String text = messages.getMessage(key, null, otherwise, LocaleContextHolder.getLocale());
    return text == null ? otherwise : text;
  }
}
