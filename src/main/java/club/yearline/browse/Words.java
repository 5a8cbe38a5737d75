package club.yearline.browse;

import club.yearline.web.Phrases;
import org.springframework.stereotype.Component;

/** Texts of the reading pages that views put together; each argument is shown as it prints. */
@Component
class Words {

  private final Phrases phrases;

  Words(Phrases phrases) {
    this.phrases = phrases;
  }

  String say(String key, Object... arguments) {
    return phrases.of("browse." + key, arguments);
  }

  /** One of two texts, by number: {@code key.one} or {@code key.many}. */
  String count(String key, int number) {
    return phrases.count("browse." + key, number);
  }

  /** The word of a mark, for lists so long that a fragment for each mark would slow them. */
  String mark(String code) {
    return phrases.of("mark." + code);
  }

  /** The words of a grade of evidence. */
  String grade(String code) {
    return phrases.of("mark.grade", phrases.of("mark.grade." + code));
  }
}
