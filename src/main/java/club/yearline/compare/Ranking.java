package club.yearline.compare;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Variant;
import java.util.ArrayList;
import java.util.List;

/** Ranks variants by what a trip leaves over. */
final class Ranking {

  private final Catalogue catalogue;
  private final Trip trip;

  Ranking(Catalogue catalogue, Trip trip) {
    this.catalogue = catalogue;
    this.trip = trip;
  }

  /** The variants, once for each group of neighbouring years with the same figures, best first. */
  List<Ranked> of(List<Variant> variants) {
    return variants.stream().flatMap(v -> of(v).stream()).sorted(Ranked.BEST_FIRST).toList();
  }

  private List<Ranked> of(Variant variant) {
    List<Ranked> ranked = new ArrayList<>();
    List<Integer> years = new ArrayList<>();
    Column before = null;
    for (int year : catalogue.model(variant.key()).orElseThrow().years()) {
      Column column = Column.of(catalogue, Position.of(variant, year));
      if (before != null && !continues(years, year, before, column)) {
        ranked.add(ranked(variant, years, before));
        years.clear();
      }
      years.add(year);
      before = column;
    }
    if (before != null) {
      ranked.add(ranked(variant, years, before));
    }
    return ranked;
  }

  /** A gap in production parts years as well: they are not one stretch. */
  private static boolean continues(List<Integer> years, int year, Column before, Column column) {
    return years.get(years.size() - 1) == year - 1 && before.saysSame(column, Flight.FIGURES);
  }

  private Ranked ranked(Variant variant, List<Integer> years, Column column) {
    return new Ranked(
        variant, years, column.builds().stream().map(b -> new Flight(b, trip)).toList());
  }
}
