package club.yearline.groundschool;

import club.yearline.catalog.Chapters;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Timeline;
import club.yearline.effectivity.Variant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What the form offers: one family's variants and features.
 *
 * @param family key of the family
 * @param name its name
 * @param variants its variants
 * @param chapters its features by chapter
 */
record Builder(String family, String name, List<Tick> variants, List<Chapter> chapters) {

  /** Something to tick. */
  record Tick(String key, String name, boolean ticked) {}

  /** The features of a chapter. */
  record Chapter(String title, List<Tick> features) {}

  /** A family to choose. */
  record FamilyLink(String key, String name, boolean here) {}

  /** The families, by name. */
  static List<FamilyLink> families(Catalogue catalogue, @Nullable String here) {
    return inOrder(catalogue)
        .map(f -> new FamilyLink(f.key(), f.name(), f.key().equals(here)))
        .toList();
  }

  /** The family meant: the one asked for, else that of a chosen record, else the first. */
  static Optional<Family> family(Catalogue catalogue, @Nullable String asked, Handout handout) {
    if (asked != null && catalogue.family(asked).isPresent()) {
      return catalogue.family(asked);
    }
    return handout.variants().stream()
        .flatMap(key -> catalogue.variant(key).stream())
        .findFirst()
        .flatMap(v -> catalogue.family(v.family()))
        .or(() -> holding(catalogue, handout))
        .or(() -> inOrder(catalogue).findFirst());
  }

  private static Optional<Family> holding(Catalogue catalogue, Handout handout) {
    return inOrder(catalogue)
        .filter(
            f ->
                handout.features().stream()
                    .anyMatch(key -> features(catalogue, f.key()).containsKey(key)))
        .findFirst();
  }

  private static Stream<Family> inOrder(Catalogue catalogue) {
    return catalogue.records().families().stream()
        .sorted(Comparator.comparing(Family::name).thenComparing(Family::key));
  }

  static Builder of(Family family, Handout handout, Catalogue catalogue, Chapters chapters) {
    Map<String, List<Feature>> byChapter =
        features(catalogue, family.key()).values().stream()
            .sorted(Comparator.comparing(Feature::name))
            .collect(Collectors.groupingBy(Feature::chapter, TreeMap::new, Collectors.toList()));
    return new Builder(
        family.key(),
        family.name(),
        catalogue.variantsOf(family.key()).stream()
            .map(v -> new Tick(v.key(), v.designation(), handout.variants().contains(v.key())))
            .toList(),
        byChapter.entrySet().stream()
            .map(
                e ->
                    new Chapter(
                        (e.getKey() + " " + chapters.title(e.getKey()).orElse("")).strip(),
                        e.getValue().stream().map(f -> tick(f, handout)).toList()))
            .toList());
  }

  private static Tick tick(Feature feature, Handout handout) {
    return new Tick(feature.key(), feature.name(), handout.features().contains(feature.key()));
  }

  private static Map<String, Feature> features(Catalogue catalogue, String family) {
    Map<String, Feature> features = new LinkedHashMap<>();
    for (Variant variant : catalogue.variantsOf(family)) {
      catalogue
          .model(variant.key())
          .ifPresent(
              m ->
                  m.timelines().stream()
                      .map(Timeline::feature)
                      .forEach(f -> features.putIfAbsent(f.key(), f)));
    }
    return features;
  }
}
