package club.yearline.spotting;

import club.yearline.catalog.PerCatalogue;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.VariantModel;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What an airframe may be, by what was seen on it: the pairs of variant and year to consider, of
 * one family or of all. They are worked out once for each state of a catalogue, when first asked
 * for, and serve any number of threads.
 */
public final class Spotting {

  private static final PerCatalogue<Kept> KEPT = new PerCatalogue<>(catalogue -> new Kept());

  private Spotting() {}

  /** The pairs of a family; empty where there is no family of that key. */
  public static Optional<Considered> of(Catalogue catalogue, String family) {
    return catalogue
        .family(family)
        .map(
            known ->
                KEPT.of(catalogue)
                    .families
                    .computeIfAbsent(
                        known.key(), key -> new Considered(models(catalogue, key).toList())));
  }

  /**
   * The pairs of all families. In a catalogue of a thousand families the first answer takes
   * seconds, because every family is compiled for it; later ones do not.
   */
  public static Considered ofAll(Catalogue catalogue) {
    return KEPT.of(catalogue).all(catalogue);
  }

  private static Stream<VariantModel> models(Catalogue catalogue, String family) {
    return catalogue.variantsOf(family).stream()
        .map(variant -> catalogue.model(variant.key()).orElseThrow());
  }

  /** What was worked out for a catalogue. Whoever asks of one family never waits for all. */
  private static final class Kept {
    private final Map<String, Considered> families = new ConcurrentHashMap<>();
    private @Nullable Considered all;

    synchronized Considered all(Catalogue catalogue) {
      Considered made = all;
      if (made == null) {
        made =
            new Considered(
                catalogue.records().families().stream()
                    .map(Family::key)
                    .flatMap(family -> models(catalogue, family))
                    .toList());
        all = made;
      }
      return made;
    }
  }
}
