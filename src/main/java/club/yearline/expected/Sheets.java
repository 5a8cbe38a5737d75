package club.yearline.expected;

import club.yearline.catalog.Chapters;
import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Located;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.State;
import club.yearline.effectivity.Visibility;
import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;

/** Lays out the expected configuration of a position. */
final class Sheets {

  private final Catalogue catalogue;
  private final Chapters chapters;
  private final Links links;
  private final Phrases phrases;
  private final Plate plate;
  private final Rows rows;

  Sheets(Chapters chapters, Links links, Wording wording, Phrases phrases) {
    this.catalogue = links.reading().catalogue();
    this.chapters = chapters;
    this.links = links;
    this.phrases = phrases;
    this.plate = new Plate(links, wording, phrases);
    this.rows = new Rows(links, wording, phrases);
  }

  Sheet of(Located.Found found, boolean walk) {
    Position position = found.position();
    List<Answer> answers = catalogue.expected(position);
    Neighbours neighbours = Neighbours.of(links, rows, phrases, position, answers);
    String href = links.expected(position);
    return new Sheet(
        plate.heading(position),
        plate.names(position),
        plate.stamps(found),
        notices(found),
        tallies(answers),
        neighbours.years(),
        groups(answers, position, neighbours, walk),
        walk,
        href,
        href + "&order=walk");
  }

  private List<String> notices(Located.Found found) {
    List<String> notices = new ArrayList<>();
    if (found.outsideBlocks()) {
      notices.add(phrases.of("expected.notice.outside", found.position().serialText()));
    }
    if (found.position().year() == null) {
      notices.add(phrases.of("expected.notice.no-year", found.position().serialText()));
    }
    return notices;
  }

  private List<Sheet.Tally> tallies(List<Answer> answers) {
    List<Sheet.Tally> tallies = new ArrayList<>();
    for (State state :
        List.of(State.SETTLED, State.TRANSITION, State.SPLITS, State.OPEN, State.UNRECORDED)) {
      List<Feature> of =
          answers.stream().filter(a -> a.state() == state).map(Answer::feature).toList();
      if (!of.isEmpty()) {
        tallies.add(tally(state, of));
      }
    }
    return tallies;
  }

  private Sheet.Tally tally(State state, List<Feature> features) {
    Stream<Feature> closer = state == State.SETTLED ? Stream.empty() : features.stream();
    return new Sheet.Tally(
        Marks.style(state),
        phrases.count("expected.tally." + state.code(), features.size()),
        closer.map(f -> new Sheet.Shift(f.name(), "#" + Rows.id(f), null)).toList());
  }

  private List<Sheet.Group> groups(
      List<Answer> answers, Position position, Neighbours neighbours, boolean walk) {
    return walk
        ? grouped(walkOrder(answers), f -> f.visibility().code(), this::place, position, neighbours)
        : grouped(answers, Feature::chapter, this::chapter, position, neighbours);
  }

  /** As one walks: from the ramp, close by, in the cabin, opened up, in the papers. */
  private static List<Answer> walkOrder(List<Answer> answers) {
    List<Answer> ordered = new ArrayList<>(answers.size());
    for (Visibility place : Visibility.values()) {
      answers.stream().filter(a -> a.feature().visibility() == place).forEach(ordered::add);
    }
    return ordered;
  }

  private List<Sheet.Group> grouped(
      List<Answer> answers,
      Function<Feature, String> by,
      Function<String, Sheet.Group> heading,
      Position position,
      Neighbours neighbours) {
    Map<String, List<Row>> byCode = new LinkedHashMap<>();
    for (Answer answer : answers) {
      Feature feature = answer.feature();
      byCode
          .computeIfAbsent(by.apply(feature), k -> new ArrayList<>())
          .add(rows.of(answer, position, neighbours.notes(feature.key())));
    }
    return byCode.entrySet().stream()
        .map(e -> heading.apply(e.getKey()).with(e.getValue()))
        .toList();
  }

  private Sheet.Group chapter(String code) {
    String title = chapters.title(code).orElseGet(() -> phrases.of("expected.chapter.other"));
    return new Sheet.Group("c-" + code, "#c-" + code, code, title, List.of());
  }

  private Sheet.Group place(String code) {
    return new Sheet.Group(
        "w-" + code,
        "#w-" + code,
        phrases.of("expected.walk." + code + ".step"),
        phrases.of("expected.walk." + code),
        List.of());
  }
}
