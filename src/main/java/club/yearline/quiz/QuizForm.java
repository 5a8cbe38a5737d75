package club.yearline.quiz;

import club.yearline.catalog.Chapters;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Timeline;
import club.yearline.web.Phrases;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What the form offers: one family's variants, chapters and features, and the kinds.
 *
 * @param family key of the family
 * @param name its name
 */
public record QuizForm(
    String family, String name, List<Box> variants, List<Group> chapters, List<Box> kinds) {

  /** Whether chapters or features are ticked. */
  public boolean narrowed() {
    return chapters.stream()
        .anyMatch(g -> g.chapter().ticked() || g.features().stream().anyMatch(Box::ticked));
  }

  /** Something to tick. */
  public record Box(String key, String name, boolean ticked) {}

  /** A chapter to tick, and its features. */
  public record Group(Box chapter, List<Box> features) {}

  /** A family to choose. */
  public record FamilyLink(String key, String name, boolean here) {}

  static List<FamilyLink> families(Catalogue catalogue, String here) {
    return catalogue.records().families().stream()
        .sorted(Comparator.comparing(Family::name).thenComparing(Family::key))
        .map(f -> new FamilyLink(f.key(), f.name(), f.key().equals(here)))
        .toList();
  }

  /** The family meant: the one asked for, else the first by name. */
  static Optional<Family> family(Catalogue catalogue, String asked) {
    return catalogue
        .family(asked)
        .or(
            () ->
                catalogue.records().families().stream()
                    .min(Comparator.comparing(Family::name).thenComparing(Family::key)));
  }

  static QuizForm of(
      Family family, Given given, Catalogue catalogue, Chapters chapters, Phrases phrases) {
    return new QuizForm(
        family.key(),
        family.name(),
        catalogue.variantsOf(family.key()).stream()
            .map(v -> new Box(v.key(), v.designation(), given.variants().contains(v.key())))
            .toList(),
        groups(family, given, catalogue, chapters),
        Arrays.stream(Kind.values())
            .map(
                k ->
                    new Box(
                        k.code(),
                        phrases.of("quiz.kind." + k.code()),
                        given.kinds().contains(k.code())))
            .toList());
  }

  private static List<Group> groups(
      Family family, Given given, Catalogue catalogue, Chapters chapters) {
    Map<String, Map<String, Feature>> byChapter = new TreeMap<>();
    catalogue.variantsOf(family.key()).stream()
        .flatMap(v -> catalogue.model(v.key()).stream())
        .flatMap(m -> m.timelines().stream())
        .map(Timeline::feature)
        .forEach(
            f ->
                byChapter
                    .computeIfAbsent(f.chapter(), k -> new TreeMap<>())
                    .put(f.name() + " " + f.key(), f));
    return byChapter.entrySet().stream()
        .map(e -> group(e.getKey(), e.getValue().values().stream().toList(), given, chapters))
        .toList();
  }

  private static Group group(String code, List<Feature> features, Given given, Chapters chapters) {
    String title = (code + " " + chapters.title(code).orElse("")).strip();
    return new Group(
        new Box(code, title, given.chapters().contains(code)),
        features.stream()
            .map(f -> new Box(f.key(), f.name(), given.features().contains(f.key())))
            .toList());
  }
}
