package club.yearline.expected;

import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Possible;
import club.yearline.effectivity.State;
import club.yearline.effectivity.Stretch;
import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Answers as rows of a page, for one reading and request. */
final class Rows {

  private final Links links;
  private final Wording wording;
  private final Phrases phrases;
  private final Marks marks;
  private final Windows windows;
  private final Items items;
  private final Proofs proofs;
  private final Fittings fittings;

  Rows(Links links, Wording wording, Phrases phrases) {
    this.links = links;
    this.wording = wording;
    this.phrases = phrases;
    this.marks = new Marks(phrases);
    this.windows = new Windows(wording, phrases);
    this.items = new Items(links, wording, phrases, marks);
    this.proofs = new Proofs(links, wording, phrases, marks);
    this.fittings = new Fittings(links.reading().catalogue(), wording, phrases);
  }

  /** The row of an answer. */
  Row of(Answer answer, Position position, List<String> neighbours) {
    Feature feature = answer.feature();
    return new Row(
        id(feature),
        feature.name(),
        links.feature(feature.key()),
        feature.chapter(),
        Marks.style(answer.state()),
        marks.word(answer.state()),
        answer.state() == State.SPLITS,
        lines(answer, position),
        proofs.of(answer),
        fittings.of(answer, position),
        neighbours);
  }

  /** Where a feature stands on its page. */
  static String id(Feature feature) {
    return "f-" + feature.key();
  }

  String word(State state) {
    return marks.word(state);
  }

  /** What is possible, oldest first; or the stretches of a split. */
  List<Row.Line> lines(Answer answer, Position position) {
    if (answer.state() == State.SPLITS) {
      return answer.stretches().stream().map(s -> line(s, position)).toList();
    }
    if (answer.state() == State.UNRECORDED) {
      return List.of(new Row.Line(null, null, null, List.of(items.nothing()), null));
    }
    boolean choice = isChoice(answer);
    List<Row.Line> lines = new ArrayList<>(answer.possible().size());
    for (int i = 0; i < answer.possible().size(); i++) {
      Possible possible = answer.possible().get(i);
      List<Row.Item> values = items.of(answer.feature(), possible, choice);
      String note = i == 0 ? null : note(possible, position);
      lines.add(new Row.Line(null, null, null, values, note));
    }
    return lines;
  }

  /** An answer in one line of text. */
  String text(@Nullable Answer answer) {
    if (answer == null) {
      return phrases.of("expected.no-feature");
    }
    String text = wording.answer(answer);
    return answer.state() == State.TRANSITION || answer.state() == State.OPEN
        ? phrases.of("expected.text.state", text, marks.word(answer.state()))
        : text;
  }

  private static boolean isChoice(Answer answer) {
    return answer.possible().size() > 1
        || answer.possible().stream().anyMatch(p -> p.offering().size() > 1);
  }

  private Row.Line line(Stretch stretch, Position position) {
    Answer answer = stretch.answer();
    Position first =
        Position.of(position.variant(), position.year(), stretch.series(), stretch.first());
    List<Row.Item> values =
        answer.state() == State.UNRECORDED
            ? List.of(items.nothing())
            : items.of(answer.feature(), answer.possible(), isChoice(answer));
    String note =
        answer.possible().stream()
            .skip(1)
            .map(p -> note(p, first))
            .filter(Objects::nonNull)
            .collect(Collectors.joining(" "));
    return new Row.Line(
        wording.serials(stretch),
        Marks.style(answer.state()),
        marks.word(answer.state()),
        values,
        note.isEmpty() ? null : note);
  }

  private @Nullable String note(Possible possible, Position position) {
    if (possible.cutIn() == null) {
      return null;
    }
    return possible.open()
        ? windows.open(possible.cutIn(), position)
        : windows.transition(possible.cutIn());
  }
}
