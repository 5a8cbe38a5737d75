package club.yearline.browse;

import club.yearline.effectivity.Descent;
import club.yearline.effectivity.ProductionRun;
import club.yearline.effectivity.Relation;
import club.yearline.effectivity.Variant;
import club.yearline.web.YearChart;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Draws the production of a family's variants over the years, with their lineage. */
record FamilyChart(FamilyView view, Words words) {

  /** The drawing; null where no run is recorded. */
  @Nullable YearChart draw() {
    if (view.variants().stream().allMatch(v -> v.runs().isEmpty())) {
      return null;
    }
    Production all = Production.of(view.variants());
    String name = view.family().name();
    YearChart chart =
        new YearChart(
            "production",
            words.say("chart.title", name),
            words.say("chart.description", view.getSpan()),
            all.first(),
            all.last());
    Map<String, YearChart.Row> rows = new HashMap<>();
    view.variants().forEach(v -> rows.put(v.key(), row(chart, v)));
    view.variants().forEach(v -> v.descent().forEach(d -> link(chart, rows, v, d)));
    return chart;
  }

  private YearChart.Row row(YearChart chart, Variant variant) {
    YearChart.Row row = chart.row(variant.designation());
    for (ProductionRun run : view.production(variant).runs()) {
      int last = run.lastYear() == null ? view.production(variant).last() : run.lastYear();
      String years = view.years(run.firstYear(), run.lastYear());
      String label = words.say("chart.run", variant.designation(), years);
      row.bar(run.firstYear(), last, "settled", label, view.links().variant(variant.key()));
    }
    return row;
  }

  private static void link(
      YearChart chart, Map<String, YearChart.Row> rows, Variant variant, Descent descent) {
    YearChart.Row from = rows.get(descent.from());
    YearChart.Row to = rows.get(variant.key());
    if (from != null && to != null) {
      chart.link(from, to, descent.relation() == Relation.BESIDE);
    }
  }
}
