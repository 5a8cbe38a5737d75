package club.yearline.corrections;

import club.yearline.catalog.Chapters;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.EntryKind;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Variant;
import club.yearline.tables.Sheet;
import club.yearline.web.Choice;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What the catalogue offers for fields that name other entries: for each kind a list of keys with
 * names. A list that would be too long to look through is left out; the field then takes a key.
 *
 * @param lists the lists by id
 */
record Known(Map<String, List<Choice>> lists) {

  private static final int MOST = 500;

  private static final Map<String, String> LIST_OF =
      Map.of(
          "family", "known-families",
          "variant", "known-variants",
          "from_variant", "known-variants",
          "series", "known-series",
          "feature", "known-features",
          "value", "known-values",
          "source", "known-sources",
          "chapter", "known-chapters");

  /** What is known where an entry is edited. */
  static Known in(Catalogue catalogue, Chapters chapters, Sheet sheet) {
    Map<String, List<Choice>> lists = new LinkedHashMap<>();
    Optional<String> family = family(catalogue, sheet);
    add(lists, "family", catalogue.records().families().stream().map(Known::choice));
    add(lists, "variant", variants(catalogue, family).map(Known::choice));
    add(
        lists,
        "series",
        catalogue.records().series().stream()
            .filter(s -> family.isEmpty() || s.family().equals(family.get()))
            .map(s -> new Choice(s.key(), s.prefix() == null ? s.key() : s.prefix())));
    add(
        lists,
        "feature",
        catalogue.records().features().stream().map(f -> new Choice(f.key(), f.name())));
    add(lists, "value", values(catalogue, sheet));
    add(
        lists,
        "source",
        catalogue.records().sources().stream().map(s -> new Choice(s.key(), s.source().title())));
    add(
        lists,
        "chapter",
        chapters.all().entrySet().stream().map(e -> new Choice(e.getKey(), e.getValue())));
    return new Known(lists);
  }

  /** The id of the list for a column; null where there is none. */
  @Nullable String listFor(String column) {
    String list = LIST_OF.get(column);
    return list != null && lists.containsKey(list) ? list : null;
  }

  private static void add(Map<String, List<Choice>> lists, String column, Stream<Choice> choices) {
    List<Choice> all =
        choices.limit(MOST + 1L).sorted(Comparator.comparing(Choice::value)).toList();
    if (!all.isEmpty() && all.size() <= MOST) {
      lists.put(LIST_OF.get(column), all);
    }
  }

  private static Stream<Variant> variants(Catalogue catalogue, Optional<String> family) {
    return family.isPresent()
        ? catalogue.variantsOf(family.get()).stream()
        : catalogue.records().variants().stream();
  }

  /** The family that an entry belongs to, by itself or by the first variant that it names. */
  private static Optional<String> family(Catalogue catalogue, Sheet sheet) {
    if (!sheet.cell("family").isEmpty()) {
      return Optional.of(sheet.cell("family"));
    }
    String variant =
        sheet.kind() == EntryKind.CHANGE
            ? sheet.rows("cut-ins").stream()
                .map(row -> row.getOrDefault("variant", ""))
                .findFirst()
                .orElse("")
            : sheet.cell("variant");
    return catalogue.variant(variant).map(Variant::family);
  }

  private static Stream<Choice> values(Catalogue catalogue, Sheet sheet) {
    return catalogue.feature(sheet.cell("feature")).map(Feature::values).stream()
        .flatMap(List::stream)
        .map(v -> new Choice(v.key(), v.label()));
  }

  private static Choice choice(Family family) {
    return new Choice(family.key(), family.name());
  }

  private static Choice choice(Variant variant) {
    return new Choice(variant.key(), variant.designation());
  }
}
