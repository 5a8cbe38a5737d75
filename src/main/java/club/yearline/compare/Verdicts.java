package club.yearline.compare;

import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Puts verdicts on a trip into words. */
final class Verdicts {

  private final Phrases phrases;
  private final Words words;
  private final Told told;

  Verdicts(Phrases phrases, Words words, Told told) {
    this.phrases = phrases;
    this.words = words;
    this.told = told;
  }

  /** The whole verdict: all that the trip asks. */
  Judged whole(String name, @Nullable String href, List<Flight> flights) {
    return judged(name, href, flights, true);
  }

  /** The verdict with what decides it alone. */
  Judged brief(String name, @Nullable String href, List<Flight> flights) {
    return judged(name, href, flights, false);
  }

  private Judged judged(
      String name, @Nullable String href, List<Flight> flights, boolean everything) {
    Outcome outcome = Outcome.common(flights.stream().map(Flight::outcome).toList());
    List<String> reasons = new ArrayList<>();
    List<List<String>> each = flights.stream().map(f -> reasons(f, everything)).toList();
    if (each.stream().distinct().count() == 1) {
      reasons.addAll(each.get(0));
    } else {
      for (int i = 0; i < flights.size(); i++) {
        reasons.add(bySerials(flights.get(i), each.get(i)));
      }
    }
    return new Judged(
        name,
        href,
        "mark is-" + outcome.code(),
        phrases.of("compare.outcome." + outcome.code()),
        left(flights).map(told::text).orElse(""),
        reasons);
  }

  private static Optional<Interval> left(List<Flight> flights) {
    List<Optional<Interval>> all = flights.stream().map(f -> f.left().found()).toList();
    return all.stream().allMatch(Optional::isPresent)
        ? all.stream().map(Optional::get).reduce(Interval::around)
        : Optional.empty();
  }

  private String bySerials(Flight flight, List<String> reasons) {
    String all = String.join(" ", reasons);
    Build.Serials serials = flight.build().serials();
    return serials == null ? all : phrases.of("compare.part", words.serials(serials), all);
  }

  private List<String> reasons(Flight flight, boolean everything) {
    Outcome outcome = flight.outcome();
    return flight.checks().stream()
        .filter(c -> everything || outcome == Outcome.CAN || c.outcome() == outcome)
        .filter(c -> everything || outcome != Outcome.CAN || c.kind() == Check.Kind.FUEL)
        .map(c -> reason(c, flight))
        .toList();
  }

  private String reason(Check check, Flight flight) {
    Interval margin = check.margin();
    String key = "compare.check." + check.kind().code() + "." + check.outcome().code();
    if (margin == null) {
      return phrases.of(key, words.without(check.missing()));
    }
    String needed =
        check.kind() == Check.Kind.FUEL ? flight.fuel().found().map(told::text).orElse("") : "";
    return switch (check.outcome()) {
      case CAN -> phrases.of(key, told.text(margin), needed);
      case CANNOT -> phrases.of(key, shortfall(margin), needed);
      default -> phrases.of(key, told.size(margin.low()), told.size(margin.high()), needed);
    };
  }

  private String shortfall(Interval margin) {
    String least = told.size(margin.high());
    String most = told.size(margin.low());
    return least.equals(most) ? least : phrases.of("compare.range", least, most);
  }
}
