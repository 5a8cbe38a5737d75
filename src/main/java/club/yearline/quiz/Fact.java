package club.yearline.quiz;

import club.yearline.citation.Grade;
import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.Possible;
import club.yearline.effectivity.State;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What an answer of the engine is worth in a quiz. Nothing, where a source disputes it, none
 * supports it, or the records do not tell.
 *
 * @param sort how far it goes
 * @param values the values it names
 */
record Fact(Sort sort, Set<String> values) {

  /** How far a fact goes. */
  enum Sort {
    /** One standard value and nothing else. */
    ONLY,
    /** Settled, but the single airframe may have one or another. */
    OFFERED,
    /** Serials of the year differ, each with one standard value. */
    STRETCHES,
    /** Old and new side by side. */
    TRANSITION,
    UNKNOWN
  }

  static final Fact UNKNOWN = new Fact(Sort.UNKNOWN, Set.of());

  static Fact of(Answer answer) {
    if (answer.evidence().disputed() || answer.evidence().grade() == Grade.NONE) {
      return UNKNOWN;
    }
    return switch (answer.state()) {
      case SETTLED -> settled(answer.possible().get(0).offering());
      case TRANSITION -> transition(answer.possible());
      case SPLITS -> stretches(answer);
      case OPEN, UNRECORDED -> UNKNOWN;
    };
  }

  private static Fact settled(List<Offered> offering) {
    boolean only = offering.size() == 1 && offering.get(0).fit() == Fit.STANDARD;
    Set<String> values = new TreeSet<>();
    offering.forEach(o -> values.add(o.canonicalValue()));
    return new Fact(only ? Sort.ONLY : Sort.OFFERED, values);
  }

  private static Fact transition(List<Possible> possible) {
    if (possible.stream().anyMatch(Possible::isNothing)) {
      return UNKNOWN;
    }
    Set<String> values = new TreeSet<>();
    possible.forEach(p -> p.offering().forEach(o -> values.add(o.canonicalValue())));
    return new Fact(Sort.TRANSITION, values);
  }

  private static Fact stretches(Answer answer) {
    Set<String> values = new TreeSet<>();
    for (var stretch : answer.stretches()) {
      Fact fact = stretch.answer().state() == State.SPLITS ? UNKNOWN : of(stretch.answer());
      if (fact.sort != Sort.ONLY) {
        return UNKNOWN;
      }
      values.addAll(fact.values);
    }
    return new Fact(Sort.STRETCHES, values);
  }

  boolean isOnly() {
    return sort == Sort.ONLY;
  }

  boolean isTransition() {
    return sort == Sort.TRANSITION;
  }

  /** The one value. */
  String value() {
    return values.iterator().next();
  }

  /** Whether all have the value; a transition proves nothing. */
  Verdict has(String value) {
    boolean named = values.contains(value);
    return switch (sort) {
      case ONLY -> Verdict.of(named);
      case OFFERED, STRETCHES -> named ? Verdict.UNPROVEN : Verdict.FAILS;
      case TRANSITION, UNKNOWN -> Verdict.UNPROVEN;
    };
  }

  /** Whether the records settle on the value; in a transition they do not. */
  Verdict settles(String value) {
    return isTransition() ? Verdict.FAILS : has(value);
  }

  /** Whether old and new left the factory side by side. */
  Verdict mixes() {
    return switch (sort) {
      case ONLY, OFFERED -> Verdict.FAILS;
      case TRANSITION -> Verdict.HOLDS;
      case STRETCHES, UNKNOWN -> Verdict.UNPROVEN;
    };
  }

  /** Whether the records rule the value out; in a transition they do not rule out its values. */
  Verdict lacks(String value) {
    boolean named = values.contains(value);
    return switch (sort) {
      case ONLY, STRETCHES -> Verdict.of(!named);
      case OFFERED -> named ? Verdict.UNPROVEN : Verdict.HOLDS;
      case TRANSITION -> named ? Verdict.FAILS : Verdict.UNPROVEN;
      case UNKNOWN -> Verdict.UNPROVEN;
    };
  }

  /** Whether some airframe has the value. */
  Verdict shows(String value) {
    boolean named = values.contains(value);
    return switch (sort) {
      case ONLY, STRETCHES -> Verdict.of(named);
      case OFFERED -> named ? Verdict.UNPROVEN : Verdict.FAILS;
      case TRANSITION, UNKNOWN -> Verdict.UNPROVEN;
    };
  }
}
