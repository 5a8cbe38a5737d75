package club.yearline.browse;

import club.yearline.catalog.Wording;
import club.yearline.effectivity.ProductionRun;
import club.yearline.effectivity.Variant;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** When variants were produced and how many, in words. */
record Production(List<ProductionRun> runs) {

  Production {
    runs = runs.stream().sorted(Comparator.comparingInt(ProductionRun::firstYear)).toList();
  }

  static Production of(Variant variant) {
    return new Production(variant.runs());
  }

  static Production of(Collection<Variant> variants) {
    return new Production(variants.stream().flatMap(v -> v.runs().stream()).toList());
  }

  /** Each run: "1975 to 1982, 1986 to 1988". */
  String years(Wording wording) {
    return runs.stream()
        .map(r -> wording.years(r.firstYear(), r.lastYear()))
        .collect(Collectors.joining(", "));
  }

  /** From the first run to the last: "1956 to 1988"; empty without a run. */
  String span(Wording wording) {
    if (runs.isEmpty()) {
      return "";
    }
    boolean still = runs.stream().anyMatch(r -> r.lastYear() == null);
    return wording.years(first(), still ? null : last());
  }

  /** The airframes built; empty unless each run has its number. */
  OptionalInt built() {
    boolean all = !runs.isEmpty() && runs.stream().allMatch(r -> r.built() != null);
    return all
        ? OptionalInt.of(runs.stream().mapToInt(Production::built).sum())
        : OptionalInt.empty();
  }

  private static int built(ProductionRun run) {
    return run.built() == null ? 0 : run.built();
  }

  int first() {
    return runs.stream().mapToInt(ProductionRun::firstYear).min().orElseThrow();
  }

  /** The last year that a run names. */
  int last() {
    return runs.stream()
        .mapToInt(r -> r.lastYear() == null ? r.firstYear() : r.lastYear())
        .max()
        .orElseThrow();
  }
}
