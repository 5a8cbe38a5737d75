package club.yearline.compare;

import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.citation.Citation;
import club.yearline.citation.Grade;
import club.yearline.citation.Source;
import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Evidence;
import club.yearline.effectivity.Possible;
import club.yearline.effectivity.Stretch;
import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Tells where the recorded figures come from. */
final class Origins {

  private final Links links;
  private final Wording wording;
  private final Phrases phrases;
  private final Words words;

  Origins(Links links, Wording wording, Phrases phrases, Words words) {
    this.links = links;
    this.wording = wording;
    this.phrases = phrases;
    this.words = words;
  }

  /** What a proof rests on, apart from whose it is: equal ones are told once. */
  private record Ground(
      Grade grade,
      boolean disputed,
      List<Comparison.Decisive> changes,
      List<Comparison.Reference> cited) {}

  /** The sources of a figure of all columns; empty where nothing is recorded of it. */
  Optional<Comparison.Origin> of(Figure figure, List<Column> columns) {
    Map<Ground, List<String>> grounds = new LinkedHashMap<>();
    for (Column column : columns) {
      Answer answer = column.answer(figure);
      if (answer != null) {
        Ground ground = ground(answer);
        if (!ground.changes.isEmpty()) {
          grounds
              .computeIfAbsent(ground, g -> new ArrayList<>())
              .add(words.name(column.position()));
        }
      }
    }
    Optional<Grade> poorest = grounds.keySet().stream().map(Ground::grade).max(Grade::compareTo);
    return poorest.map(
        g ->
            new Comparison.Origin(
                mark(g),
                phrases.of("mark.grade." + g.code()),
                grounds.keySet().stream().anyMatch(Ground::disputed),
                links.feature(figure.key()),
                grounds.entrySet().stream().map(e -> proof(e.getKey(), e.getValue())).toList()));
  }

  private static String mark(Grade grade) {
    return "mark grade of-" + grade.code();
  }

  private Comparison.Proof proof(Ground ground, List<String> whose) {
    return new Comparison.Proof(
        String.join(phrases.of("compare.comma"), whose),
        mark(ground.grade),
        phrases.of("mark.grade." + ground.grade.code()),
        ground.disputed,
        ground.changes,
        ground.cited);
  }

  private Ground ground(Answer answer) {
    Set<Comparison.Decisive> changes = new LinkedHashSet<>();
    Stream.concat(
            answer.possible().stream(),
            answer.stretches().stream().map(Stretch::answer).flatMap(a -> a.possible().stream()))
        .forEach(p -> add(changes, p));
    Evidence evidence = answer.evidence();
    Set<Comparison.Reference> cited = new LinkedHashSet<>();
    for (Citation citation : evidence.citations()) {
      links
          .reading()
          .catalogue()
          .source(citation.source())
          .ifPresent(s -> cited.add(reference(citation, s.source())));
    }
    return new Ground(
        evidence.grade(), evidence.disputed(), List.copyOf(changes), List.copyOf(cited));
  }

  private void add(Set<Comparison.Decisive> changes, Possible possible) {
    Change change = possible.change();
    CutIn cutIn = possible.cutIn();
    if (change != null && cutIn != null) {
      changes.add(
          new Comparison.Decisive(
              change.title(), links.change(change.key()), wording.cutIn(cutIn)));
    }
  }

  private Comparison.Reference reference(Citation citation, Source source) {
    StringBuilder where = new StringBuilder();
    if (citation.locator() != null) {
      where.append(", ").append(citation.locator());
    }
    if (citation.note() != null) {
      where.append(". ").append(citation.note());
    }
    return new Comparison.Reference(
        phrases.of(citation.supports() ? "compare.for" : "compare.against"),
        !citation.supports(),
        source.title(),
        links.source(source.key()),
        where.toString());
  }
}
