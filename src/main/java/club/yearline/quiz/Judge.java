package club.yearline.quiz;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.VariantModel;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Judges claims by the engine; remembers what it has asked. For one thread. */
final class Judge {

  private final Catalogue catalogue;
  private final Map<String, Fact> facts = new HashMap<>();

  Judge(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** What is known of a feature at a position. */
  Fact fact(Position at, Feature feature) {
    Series series = at.series();
    String place = series == null ? "" : series.key() + " " + at.serialText();
    String key = at.variant().key() + "|" + at.year() + "|" + place + "|" + feature.key();
    return facts.computeIfAbsent(key, k -> ask(at, feature));
  }

  private Fact ask(Position at, Feature feature) {
    return catalogue
        .model(at.variant().key())
        .flatMap(m -> m.timeline(feature.key()))
        .map(t -> Fact.of(t.at(at)))
        .orElse(Fact.UNKNOWN);
  }

  /** What the records make of a claim. */
  Verdict verdict(Claim claim) {
    if (claim instanceof Claim.Has c) {
      return fact(c.at(), c.feature()).has(c.value());
    }
    if (claim instanceof Claim.Became c) {
      return fact(c.before(), c.feature())
          .has(c.from())
          .and(fact(c.after(), c.feature()).has(c.to()));
    }
    if (claim instanceof Claim.InOrder c) {
      return inOrder(c.arrivals());
    }
    if (claim instanceof Claim.Odd c) {
      return odd(c);
    }
    if (claim instanceof Claim.Settles c) {
      return fact(c.at(), c.feature()).settles(c.value());
    }
    if (claim instanceof Claim.Mixes c) {
      return fact(c.at(), c.feature()).mixes();
    }
    Claim.Lacks c = (Claim.Lacks) claim;
    return fact(c.at(), c.feature()).lacks(c.value());
  }

  private Verdict inOrder(List<Claim.Arrival> arrivals) {
    boolean ascending = true;
    Set<Integer> years = new HashSet<>();
    int last = Integer.MIN_VALUE;
    for (Claim.Arrival arrival : arrivals) {
      Integer year = arrival.year().year();
      if (year == null || !years.add(year) || !arrives(arrival)) {
        return Verdict.UNPROVEN;
      }
      ascending &= year > last;
      last = year;
    }
    return Verdict.of(ascending);
  }

  /** Whether a thing came new in its year: some airframe has it, and none of any year before. */
  boolean arrives(Claim.Arrival arrival) {
    VariantModel model = catalogue.model(arrival.year().variant().key()).orElseThrow();
    boolean any = false;
    for (int year : model.years()) {
      Position at = Position.of(model.variant(), year);
      Verdict shows = fact(at, arrival.feature()).shows(arrival.value());
      if (arrival.year().year() != null && year == arrival.year().year()) {
        return any && shows == Verdict.HOLDS;
      }
      if (shows != Verdict.FAILS) {
        return false;
      }
      any = true;
    }
    return false;
  }

  private Verdict odd(Claim.Odd claim) {
    List<Fact> facts = claim.places().stream().map(p -> fact(p, claim.feature())).toList();
    if (!facts.stream().allMatch(Fact::isOnly)) {
      return Verdict.UNPROVEN;
    }
    String odd = facts.get(claim.odd()).value();
    Set<String> others = new HashSet<>();
    for (int i = 0; i < facts.size(); i++) {
      if (i != claim.odd()) {
        others.add(facts.get(i).value());
      }
    }
    return Verdict.of(others.size() == 1 && !others.contains(odd));
  }
}
