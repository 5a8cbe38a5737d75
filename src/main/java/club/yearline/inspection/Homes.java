package club.yearline.inspection;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Variant;
import club.yearline.effectivity.VariantModel;
import club.yearline.effectivity.YearSpan;
import club.yearline.spotting.Seen;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds where a value belongs: the variants and years that left the factory with it. */
final class Homes {

  private final Catalogue catalogue;
  private final List<Variant> inOrder;

  /**
   * Looks in all families.
   *
   * @param family the family to name first
   */
  Homes(Catalogue catalogue, String family) {
    this.catalogue = catalogue;
    this.inOrder =
        Stream.concat(
                Stream.of(family),
                catalogue.records().families().stream()
                    .map(f -> f.key())
                    .filter(f -> !f.equals(family)))
            .flatMap(f -> catalogue.variantsOf(f).stream())
            .toList();
  }

  /** The years in which the value's standing is one of those wanted, by variant. */
  List<Belongs> of(Seen seen, Predicate<Match> wanted) {
    Set<String> offering =
        catalogue.changesOf(seen.feature().key()).stream()
            .filter(
                change -> change.offering().stream().anyMatch(o -> Matching.shows(seen, o.value())))
            .map(Change::cutIns)
            .flatMap(List::stream)
            .map(CutIn::variant)
            .collect(Collectors.toSet());
    return inOrder.stream()
        .filter(v -> offering.contains(v.key()))
        .map(v -> catalogue.model(v.key()))
        .flatMap(Optional::stream)
        .flatMap(model -> years(model, seen, wanted).stream())
        .toList();
  }

  private static List<Belongs> years(VariantModel model, Seen seen, Predicate<Match> wanted) {
    List<Belongs> years = new ArrayList<>();
    model
        .timeline(seen.feature().key())
        .ifPresent(
            timeline -> {
              for (YearSpan span : timeline.spans()) {
                if (wanted.test(Matching.of(seen, span.answer(), false))) {
                  add(years, new Belongs(model.variant(), span.firstYear(), span.lastYear()));
                }
              }
            });
    return years;
  }

  /** Joins neighbouring years. */
  private static void add(List<Belongs> years, Belongs next) {
    int last = years.size() - 1;
    if (last >= 0 && years.get(last).lastYear() == next.firstYear() - 1) {
      years.set(last, new Belongs(next.variant(), years.get(last).firstYear(), next.lastYear()));
    } else {
      years.add(next);
    }
  }
}
