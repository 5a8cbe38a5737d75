package club.yearline.spotting;

import club.yearline.catalog.PerCatalogue;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.VariantModel;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * What an airframe may be, by what was seen on it: the pairs of variant and year to consider, of
 * one family or of all. They are worked out once for each state of a catalogue, when first asked
 * for, and serve any number of threads.
 */
public final class Spotting {

  /** Families have keys; no key has this form. */
  private static final String ALL = "*";

  private static final PerCatalogue<Map<String, Considered>> KEPT =
      new PerCatalogue<>(catalogue -> new ConcurrentHashMap<>());

  private Spotting() {}

  /** The pairs of a family; empty where there is no family of that key. */
  public static Optional<Considered> of(Catalogue catalogue, String family) {
    return catalogue
        .family(family)
        .map(
            known ->
                KEPT.of(catalogue)
                    .computeIfAbsent(
                        known.key(), key -> new Considered(models(catalogue, key).toList())));
  }

  /**
   * The pairs of all families. In a catalogue of a thousand families the first answer takes
   * seconds, because every family is compiled for it; later ones do not.
   */
  public static Considered ofAll(Catalogue catalogue) {
    return KEPT.of(catalogue).computeIfAbsent(ALL, key -> new Considered(all(catalogue)));
  }

  private static List<VariantModel> all(Catalogue catalogue) {
    return catalogue.records().families().stream()
        .map(Family::key)
        .flatMap(family -> models(catalogue, family))
        .toList();
  }

  private static Stream<VariantModel> models(Catalogue catalogue, String family) {
    return catalogue.variantsOf(family).stream()
        .map(variant -> catalogue.model(variant.key()).orElseThrow());
  }
}
