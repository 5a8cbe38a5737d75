package club.yearline.accounts;

import club.yearline.web.Phrases;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What is wrong with a form, in words, by field. */
final class Faults {

  private final Phrases phrases;
  private final Map<String, String> byField = new LinkedHashMap<>();

  Faults(Phrases phrases) {
    this.phrases = phrases;
  }

  /** Says what is wrong with a field; the first word about it stands. */
  Faults at(String field, String key, @Nullable Object... arguments) {
    byField.putIfAbsent(field, phrases.of(key, arguments));
    return this;
  }

  boolean isEmpty() {
    return byField.isEmpty();
  }

  /** For the template. */
  Map<String, String> byField() {
    return byField;
  }
}
