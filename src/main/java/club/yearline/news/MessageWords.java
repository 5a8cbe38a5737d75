package club.yearline.news;

import club.yearline.accounts.People;
import club.yearline.catalog.Snapshots;
import club.yearline.effectivity.Catalogue;
import club.yearline.web.Phrases;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** Puts messages into words, each in one line. */
@Component
class MessageWords {

  /** More names than these make no line that anybody reads. */
  private static final int NAMES = 5;

  private final People people;
  private final Snapshots snapshots;
  private final Phrases phrases;

  MessageWords(People people, Snapshots snapshots, Phrases phrases) {
    this.people = people;
    this.snapshots = snapshots;
    this.phrases = phrases;
  }

  /** The messages in words, in their order. */
  List<String> say(List<Message> messages) {
    Map<Long, String> names =
        people.namesOf(
            messages.stream()
                .map(message -> message.about().actor())
                .filter(Objects::nonNull)
                .collect(Collectors.toSet()));
    return messages.stream().map(message -> say(message.about(), names)).toList();
  }

  private String say(Message.About about, Map<Long, String> names) {
    String key = "news.message." + about.kind().code();
    String text =
        switch (about.kind()) {
          case REVISION -> phrases.of(key, about.subject(), named(about.touched()));
          case JOIN_ASKED -> phrases.of(key);
          default ->
              phrases.of(
                  key,
                  about.title(),
                  about.actor() == null ? "" : names.getOrDefault(about.actor(), ""));
        };
    return oneLine(text);
  }

  private String named(List<Watched> touched) {
    Catalogue catalogue = snapshots.head().catalogue();
    String names =
        touched.stream()
            .limit(NAMES)
            .map(watched -> watched.name(catalogue))
            .collect(Collectors.joining(", "));
    return touched.size() > NAMES ? phrases.of("news.message.more", names) : names;
  }

  /** Titles are typed by people: in a mail, a line end could begin a header. */
  static String oneLine(String text) {
    return text.replaceAll("[\\p{Cntrl}\\u2028\\u2029]+", " ").strip();
  }
}
