package club.yearline.expected;

import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.citation.Citation;
import club.yearline.citation.Source;
import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Evidence;
import club.yearline.effectivity.Possible;
import club.yearline.effectivity.Stretch;
import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Evidence as shown: the deciding changes, and the sources for and against. */
final class Proofs {

  private final Catalogue catalogue;
  private final Links links;
  private final Marks marks;
  private final Wording wording;
  private final String supports;
  private final String disputes;

  Proofs(Links links, Wording wording, Phrases phrases, Marks marks) {
    this.catalogue = links.reading().catalogue();
    this.links = links;
    this.marks = marks;
    this.wording = wording;
    this.supports = phrases.of("expected.supports");
    this.disputes = phrases.of("expected.disputes");
  }

  Row.Proof of(Answer answer) {
    Evidence evidence = answer.evidence();
    return new Row.Proof(
        Marks.style(evidence.grade()),
        marks.word(evidence.grade()),
        evidence.disputed(),
        deciding(answer),
        cited(evidence.citations()));
  }

  private List<Row.Deciding> deciding(Answer answer) {
    Map<String, Row.Deciding> deciding = new LinkedHashMap<>();
    add(answer.possible(), deciding);
    for (Stretch stretch : answer.stretches()) {
      add(stretch.answer().possible(), deciding);
    }
    return List.copyOf(deciding.values());
  }

  private void add(List<Possible> possible, Map<String, Row.Deciding> deciding) {
    for (Possible one : possible) {
      Change change = one.change();
      CutIn cutIn = one.cutIn();
      if (change != null && cutIn != null && !deciding.containsKey(change.key())) {
        deciding.put(
            change.key(),
            new Row.Deciding(change.title(), links.change(change.key()), wording.cutIn(cutIn)));
      }
    }
  }

  private List<Row.Cited> cited(List<Citation> citations) {
    List<Row.Cited> cited = new ArrayList<>(citations.size());
    for (Citation citation : citations) {
      catalogue.source(citation.source()).ifPresent(s -> cited.add(cited(citation, s.source())));
    }
    return cited;
  }

  private Row.Cited cited(Citation citation, Source source) {
    return new Row.Cited(
        citation.supports() ? supports : disputes,
        !citation.supports(),
        source.title(),
        links.source(source.key()),
        where(citation));
  }

  private static String where(Citation citation) {
    StringBuilder where = new StringBuilder();
    if (citation.locator() != null) {
      where.append(", ").append(citation.locator());
    }
    if (citation.note() != null) {
      where.append(". ").append(citation.note());
    }
    return where.toString();
  }
}
