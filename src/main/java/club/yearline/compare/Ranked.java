package club.yearline.compare;

import club.yearline.effectivity.Variant;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How a variant of some years stands to a trip.
 *
 * @param variant the variant
 * @param years the years of production with the same figures, ascending
 * @param flights the trip flown by each of its builds
 */
record Ranked(Variant variant, List<Integer> years, List<Flight> flights) {

  /** First who can, and among these who leaves most over; last who cannot be judged. */
  static final Comparator<Ranked> BEST_FIRST =
      Comparator.comparing(Ranked::outcome)
          .thenComparing(
              r -> r.least().orElse(BigDecimal.ZERO), Comparator.<BigDecimal>reverseOrder())
          .thenComparing(r -> r.variant().designation())
          .thenComparing(Ranked::firstYear);

  Ranked {
    years = List.copyOf(years);
    flights = List.copyOf(flights);
  }

  int firstYear() {
    return years.get(0);
  }

  int lastYear() {
    return years.get(years.size() - 1);
  }

  Outcome outcome() {
    return Outcome.common(flights.stream().map(Flight::outcome).toList());
  }

  /** What is left over at worst; empty where that cannot be told of all. */
  Optional<BigDecimal> least() {
    List<BigDecimal> all = flights.stream().flatMap(f -> f.rank().stream()).toList();
    return all.size() == flights.size()
        ? all.stream().min(Comparator.naturalOrder())
        : Optional.empty();
  }
}
