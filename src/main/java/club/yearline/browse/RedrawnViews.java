package club.yearline.browse;

import club.yearline.browse.Between.Comparison;
import club.yearline.browse.Redrawn.Pair;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.ImpactRow;
import club.yearline.effectivity.Variant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Draws the timelines that a comparison changes, before and after. */
record RedrawnViews(Comparison comparison, Wording wording, RecordTexts texts) {

  private static final int DRAWN = 6;
  private static final int ROWS = 8;
  private static final int NAMED = 40;

  /** What is drawn: the features with the most airframes affected. */
  Redrawn draw() {
    List<Pair> pairs = new ArrayList<>();
    List<String> named = new ArrayList<>();
    for (List<ImpactRow> rows : byFeature()) {
      Pair pair = pairs.size() < DRAWN ? pair(rows) : null;
      if (pair != null && (pair.before() != null || pair.after() != null)) {
        pairs.add(pair);
      } else {
        named.add(rows.get(0).feature().name());
      }
    }
    int shown = Math.min(named.size(), NAMED);
    return new Redrawn(pairs, List.copyOf(named.subList(0, shown)), named.size() - shown);
  }

  /** Evidence alone does not show in a drawing. */
  private List<List<ImpactRow>> byFeature() {
    Map<String, List<ImpactRow>> byFeature =
        comparison.impact().stream()
            .filter(row -> row.kind() != ImpactRow.Kind.EVIDENCE_ONLY)
            .collect(
                Collectors.groupingBy(
                    row -> row.feature().key(), LinkedHashMap::new, Collectors.toList()));
    return byFeature.values().stream()
        .sorted(Comparator.comparingDouble(RedrawnViews::airframes).reversed())
        .toList();
  }

  private static double airframes(List<ImpactRow> rows) {
    return rows.stream().mapToDouble(r -> Math.max(r.airframesBefore(), r.airframesAfter())).sum();
  }

  private Pair pair(List<ImpactRow> rows) {
    Feature feature = rows.get(0).feature();
    Map<String, Variant> variants = new LinkedHashMap<>();
    rows.stream()
        .map(ImpactRow::variant)
        .sorted(Comparator.comparing(Variant::family))
        .forEach(variant -> variants.putIfAbsent(variant.key(), variant));
    List<Variant> drawn = variants.values().stream().limit(ROWS).toList();
    List<Line> before = Line.of(feature, comparison.before(), drawn);
    List<Line> after = Line.of(feature, comparison.after(), drawn);
    return new Pair(
        feature.name(),
        FeatureDrawing.beside(feature, before, after, wording, texts).orElse(null),
        FeatureDrawing.beside(feature, after, before, wording, texts).orElse(null),
        variants.size() - drawn.size());
  }
}
