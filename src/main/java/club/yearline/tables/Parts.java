package club.yearline.tables;

import club.yearline.citation.Citation;
import club.yearline.citation.Stance;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Descent;
import club.yearline.effectivity.FeatureValue;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.ProductionRun;
import club.yearline.effectivity.Relation;
import club.yearline.effectivity.SoldName;
import java.util.ArrayList;
import java.util.List;

/** The rows that entries hold, by the entry they name as theirs. */
final class Parts {

  final Children<SoldName> names = new Children<>();
  final Children<ProductionRun> runs = new Children<>();
  final Children<Descent> descent = new Children<>();
  final Children<FeatureValue> values = new Children<>();
  final Children<Offered> offerings = new Children<>();
  final Children<CutIn> cutIns = new Children<>();
  final Children<Citation> citations = new Children<>();
  private final Keys keys;

  Parts(Keys keys) {
    this.keys = keys;
  }

  void add(String table, Row row) {
    switch (table) {
      case "citations" -> citations.add(parentOfCitation(row), citation(row));
      case "variant-names" -> names.add(row.text("variant"), soldName(row));
      case "production-runs" -> addRun(row);
      case "lineage" -> descent.add(row.text("to_variant"), descent(row));
      case "feature-values" -> values.add(row.text("feature"), value(row));
      case "change-offerings" -> offerings.add(row.text("change"), offered(row));
      case "cut-ins" -> cutIns.add(row.text("change"), cutIn(row));
      default -> throw new IllegalArgumentException("No entry is made from table " + table);
    }
  }

  /** What rows name as the entry that holds them, and no entry is. */
  List<Orphan> orphans() {
    List<Orphan> orphans = new ArrayList<>();
    addOrphans(orphans, "variant-names", List.of("variant"), names);
    addOrphans(orphans, "production-runs", List.of("variant"), runs);
    addOrphans(orphans, "lineage", List.of("to_variant"), descent);
    addOrphans(orphans, "feature-values", List.of("feature"), values);
    addOrphans(orphans, "change-offerings", List.of("change"), offerings);
    addOrphans(orphans, "cut-ins", List.of("change"), cutIns);
    addOrphans(orphans, "citations", List.of("record_kind", "record"), citations);
    return orphans;
  }

  private static void addOrphans(
      List<Orphan> orphans, String table, List<String> by, Children<?> children) {
    children.orphans().stream()
        .filter(parent -> !parent.isEmpty() && !parent.endsWith("/"))
        .forEach(parent -> orphans.add(new Orphan(table, by, parent)));
  }

  private static String parentOfCitation(Row row) {
    return row.text("record_kind") + "/" + row.text("record");
  }

  private Citation citation(Row row) {
    return new Citation(
        row.text("key"),
        keys.orNull(row, "variant"),
        keys.of(row, "source"),
        row.textOrNull("locator"),
        row.word("stance", Stance.class),
        row.textOrNull("note"));
  }

  private static SoldName soldName(Row row) {
    return new SoldName(row.text("name"), row.whole("first_year"), row.whole("last_year"));
  }

  /** A run whose first year cannot be read is left out; its cell has had its complaint. */
  private void addRun(Row row) {
    Integer first = row.whole("first_year");
    if (first != null) {
      runs.add(
          row.text("variant"),
          new ProductionRun(first, row.whole("last_year"), row.whole("built")));
    }
  }

  private Descent descent(Row row) {
    return new Descent(
        keys.of(row, "from_variant"), row.word("relation", Relation.class), row.textOrNull("note"));
  }

  private static FeatureValue value(Row row) {
    return new FeatureValue(
        row.text("key"),
        row.text("label"),
        row.textOrNull("cue"),
        row.textOrNull("picture"),
        row.textOrNull("picture_credit"));
  }

  private Offered offered(Row row) {
    return new Offered(keys.of(row, "value"), row.word("fit", Fit.class), row.number("take_rate"));
  }

  private CutIn cutIn(Row row) {
    return new CutIn(
        keys.of(row, "variant"),
        row.flag("at_start"),
        row.whole("first_year"),
        row.whole("settled_year"),
        keys.orNull(row, "series"),
        row.textOrNull("first_serial"),
        row.textOrNull("settled_serial"));
  }
}
