package club.yearline.expected;

import club.yearline.catalog.Links;
import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Difference;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.VariantModel;
import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/** What differed in the nearest produced year before and after a position. */
final class Neighbours {

  private final List<Sheet.Neighbour> years = new ArrayList<>(2);
  private final Map<String, List<String>> notes = new HashMap<>();
  private final Links links;
  private final Rows rows;
  private final Phrases phrases;
  private final Position position;
  private final List<Answer> answers;

  private Neighbours(
      Links links, Rows rows, Phrases phrases, Position position, List<Answer> answers) {
    this.links = links;
    this.rows = rows;
    this.phrases = phrases;
    this.position = position;
    this.answers = answers;
  }

  /** Compares a position's answers with those of its neighbours; without a year it has none. */
  static Neighbours of(
      Links links, Rows rows, Phrases phrases, Position position, List<Answer> answers) {
    Neighbours neighbours = new Neighbours(links, rows, phrases, position, answers);
    if (position.year() != null) {
      Catalogue catalogue = links.reading().catalogue();
      VariantModel model = catalogue.model(position.variant().key()).orElseThrow();
      neighbours.add(model, model.yearBefore(position.year()), "expected.before");
      neighbours.add(model, model.yearAfter(position.year()), "expected.after");
    }
    return neighbours;
  }

  /** The years with all that differs in each. */
  List<Sheet.Neighbour> years() {
    return years;
  }

  /** What the neighbours had instead of one feature's answer. */
  List<String> notes(String feature) {
    return notes.getOrDefault(feature, List.of());
  }

  private void add(VariantModel model, OptionalInt year, String key) {
    if (year.isEmpty()) {
      return;
    }
    Position there = Position.of(position.variant(), year.getAsInt());
    List<Sheet.Shift> shifts = new ArrayList<>();
    for (Difference pair : Difference.pair(answers, model.expected(there))) {
      if (pair.differs()) {
        shifts.add(shift(pair, year.getAsInt()));
      }
    }
    years.add(
        new Sheet.Neighbour(
            shifts.isEmpty()
                ? phrases.of(key + ".none", year.getAsInt())
                : phrases.count(key, shifts.size(), year.getAsInt()),
            links.differences(Position.of(position.variant(), yearOf(position)), there),
            shifts));
  }

  private Sheet.Shift shift(Difference pair, int year) {
    String text = phrases.of("expected.neighbour", year, rows.text(pair.to()));
    notes.computeIfAbsent(pair.feature().key(), k -> new ArrayList<>(2)).add(text);
    return new Sheet.Shift(pair.feature().name(), "#" + Rows.id(pair.feature()), text);
  }

  private static int yearOf(Position position) {
    Integer year = position.year();
    if (year == null) {
      throw new IllegalStateException("A position without a year has no neighbours");
    }
    return year;
  }
}
