package club.yearline.quiz;

import club.yearline.citation.Grade;
import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A second opinion on claims: asks the engine for the whole expected configuration each time, and
 * reads the answers without anything of the quiz's own judge.
 */
final class Referee {

  private final Catalogue catalogue;

  Referee(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** Whether the engine proves the claim. */
  boolean proves(Claim claim) {
    if (claim instanceof Claim.Has c) {
      return c.value().equals(only(c.at(), c.feature()));
    }
    if (claim instanceof Claim.Became c) {
      return c.from().equals(only(c.before(), c.feature()))
          && c.to().equals(only(c.after(), c.feature()));
    }
    if (claim instanceof Claim.InOrder c) {
      return cameInOrder(c.arrivals());
    }
    if (claim instanceof Claim.Odd c) {
      return others(c).size() == 1 && !others(c).contains(only(c.place(), c.feature()));
    }
    if (claim instanceof Claim.Settles c) {
      return c.value().equals(only(c.at(), c.feature()));
    }
    if (claim instanceof Claim.Mixes c) {
      return is(State.TRANSITION, c.at(), c.feature());
    }
    Claim.Lacks c = (Claim.Lacks) claim;
    return certain(c.at(), c.feature()) && !named(c.at(), c.feature()).contains(c.value());
  }

  /** Whether the engine proves the contrary. */
  boolean disproves(Claim claim) {
    if (claim instanceof Claim.Has c) {
      return never(c.at(), c.feature(), c.value());
    }
    if (claim instanceof Claim.Became c) {
      return never(c.before(), c.feature(), c.from()) || never(c.after(), c.feature(), c.to());
    }
    if (claim instanceof Claim.InOrder c) {
      return c.arrivals().stream().allMatch(this::came) && !ascending(c.arrivals());
    }
    if (claim instanceof Claim.Odd c) {
      return c.places().stream().allMatch(p -> only(p, c.feature()) != null) && !proves(c);
    }
    if (claim instanceof Claim.Settles c) {
      return is(State.TRANSITION, c.at(), c.feature()) || never(c.at(), c.feature(), c.value());
    }
    if (claim instanceof Claim.Mixes c) {
      return is(State.SETTLED, c.at(), c.feature());
    }
    Claim.Lacks c = (Claim.Lacks) claim;
    return c.value().equals(only(c.at(), c.feature()))
        || is(State.TRANSITION, c.at(), c.feature())
            && named(c.at(), c.feature()).contains(c.value());
  }

  private Set<String> others(Claim.Odd odd) {
    Set<String> others = new TreeSet<>();
    for (Position place : odd.places()) {
      if (place != odd.place()) {
        others.add(Objects.requireNonNullElse(only(place, odd.feature()), "?"));
      }
    }
    return others;
  }

  private boolean cameInOrder(List<Claim.Arrival> arrivals) {
    return arrivals.stream().allMatch(this::came) && ascending(arrivals);
  }

  private static boolean ascending(List<Claim.Arrival> arrivals) {
    List<Integer> years = arrivals.stream().map(a -> a.year().year()).toList();
    return years.equals(List.copyOf(new TreeSet<>(years)));
  }

  private boolean came(Claim.Arrival arrival) {
    int year = Objects.requireNonNull(arrival.year().year());
    List<Integer> before = new ArrayList<>();
    for (int y : catalogue.model(arrival.year().variant().key()).orElseThrow().years()) {
      if (y < year) {
        before.add(y);
      }
    }
    return !before.isEmpty()
        && before.stream()
            .map(y -> Position.of(arrival.year().variant(), y))
            .allMatch(p -> never(p, arrival.feature(), arrival.value()))
        && some(arrival.year(), arrival.feature()).contains(arrival.value());
  }

  /** The values that some airframe certainly has. */
  private Set<String> some(Position at, Feature feature) {
    return leaves(at, feature)
        .filter(a -> single(a) != null)
        .map(Referee::single)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private boolean never(Position at, Feature feature, String value) {
    return certain(at, feature) && !named(at, feature).contains(value);
  }

  /** Whether every airframe of the position is settled, with sources and without dispute. */
  private boolean certain(Position at, Feature feature) {
    return answer(at, feature).isPresent()
        && leaves(at, feature).allMatch(a -> sound(a) && a.state() == State.SETTLED);
  }

  private boolean is(State state, Position at, Feature feature) {
    return answer(at, feature)
        .filter(a -> sound(a) && a.state() == state)
        .filter(a -> a.possible().stream().noneMatch(p -> p.isNothing()))
        .isPresent();
  }

  private String only(Position at, Feature feature) {
    return answer(at, feature)
        .filter(a -> sound(a) && a.state() == State.SETTLED)
        .map(Referee::single)
        .orElse(null);
  }

  private static String single(Answer answer) {
    var offering = answer.possible().get(0).offering();
    return offering.size() == 1 && offering.get(0).fit() == Fit.STANDARD
        ? offering.get(0).canonicalValue()
        : null;
  }

  private Set<String> named(Position at, Feature feature) {
    return leaves(at, feature)
        .flatMap(a -> a.possible().stream())
        .flatMap(p -> p.offering().stream())
        .map(o -> o.canonicalValue())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static boolean sound(Answer answer) {
    return !answer.evidence().disputed() && answer.evidence().grade() != Grade.NONE;
  }

  /** The answer, or those of its stretches. */
  private Stream<Answer> leaves(Position at, Feature feature) {
    return answer(at, feature).stream()
        .flatMap(
            a ->
                a.state() == State.SPLITS
                    ? a.stretches().stream().map(s -> s.answer())
                    : Stream.of(a));
  }

  private Optional<Answer> answer(Position at, Feature feature) {
    return catalogue.expected(at).stream()
        .filter(a -> a.feature().key().equals(feature.key()))
        .findFirst();
  }
}
