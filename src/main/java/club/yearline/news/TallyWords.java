package club.yearline.news;

import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import org.springframework.stereotype.Component;

/** Says in words what a revision did, in those that its page uses. */
@Component
class TallyWords {

  private final Phrases phrases;

  TallyWords(Phrases phrases) {
    this.phrases = phrases;
  }

  /** One sentence on edits, and one on answers where there was anything before. */
  List<String> say(Tally tally) {
    List<String> sentences = new ArrayList<>();
    sentences.add(edits(tally));
    if (tally.compared()) {
      sentences.add(answers(tally));
    }
    return sentences;
  }

  private String edits(Tally tally) {
    StringJoiner parts = new StringJoiner(", ");
    add(parts, "records.edits.added", tally.added());
    add(parts, "records.edits.changed", tally.changed());
    add(parts, "records.edits.withdrawn", tally.withdrawn());
    return parts.length() == 0
        ? phrases.of("records.edits.none")
        : phrases.of("news.tally", phrases.of("records.edits"), parts);
  }

  private String answers(Tally tally) {
    StringJoiner parts = new StringJoiner(", ");
    count(parts, "records.impact.changed", tally.answersChanged());
    count(parts, "records.impact.evidence-only", tally.onOtherEvidence());
    count(parts, "records.impact.appears", tally.answersNew());
    count(parts, "records.impact.disappears", tally.answersGone());
    return parts.length() == 0
        ? phrases.of("records.impact.none")
        : phrases.of("news.tally", phrases.of("records.impact"), parts);
  }

  private void add(StringJoiner parts, String key, int number) {
    if (number > 0) {
      parts.add(phrases.of(key, number));
    }
  }

  private void count(StringJoiner parts, String key, int number) {
    if (number > 0) {
      parts.add(phrases.count(key, number));
    }
  }
}
