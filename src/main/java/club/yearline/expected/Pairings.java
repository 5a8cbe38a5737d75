package club.yearline.expected;

import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Difference;
import club.yearline.effectivity.Position;
import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Lays two variant-years side by side. */
final class Pairings {

  private final Catalogue catalogue;
  private final Links links;
  private final Phrases phrases;
  private final Rows rows;
  private final Plate plate;

  Pairings(Links links, Wording wording, Phrases phrases) {
    this.catalogue = links.reading().catalogue();
    this.links = links;
    this.phrases = phrases;
    this.rows = new Rows(links, wording, phrases);
    this.plate = new Plate(links, wording, phrases);
  }

  Pairing of(Position from, Position to) {
    List<Pairing.Pair> differing = new ArrayList<>();
    List<Pairing.Pair> same = new ArrayList<>();
    for (Difference pair : Difference.pair(catalogue.expected(from), catalogue.expected(to))) {
      (pair.differs() ? differing : same).add(pair(pair, from, to));
    }
    return new Pairing(
        plate.heading(from),
        links.expected(from),
        plate.heading(to),
        links.expected(to),
        links.differences(to, from),
        links.compare(List.of(from, to)),
        phrases.count("differences.summary", differing.size(), same.size()),
        differing,
        same,
        phrases.count("differences.same", same.size()));
  }

  private Pairing.Pair pair(Difference pair, Position from, Position to) {
    return new Pairing.Pair(
        pair.feature().name(),
        links.feature(pair.feature().key()),
        pair.feature().chapter(),
        cell(pair.from(), from),
        cell(pair.to(), to));
  }

  private Pairing.Cell cell(@Nullable Answer answer, Position position) {
    if (answer == null) {
      String text = phrases.of("expected.no-feature.of", position.variant().designation());
      Row.Item item = new Row.Item(text, null, null, null, null);
      return new Pairing.Cell("", "", List.of(new Row.Line(null, null, null, List.of(item), null)));
    }
    return new Pairing.Cell(
        Marks.style(answer.state()), rows.word(answer.state()), rows.lines(answer, position));
  }
}
