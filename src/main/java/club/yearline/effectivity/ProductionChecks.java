package club.yearline.effectivity;

import static club.yearline.effectivity.Finding.Code.OUTSIDE_PRODUCTION;
import static club.yearline.effectivity.Finding.Code.REVERSED_WINDOW;
import static club.yearline.effectivity.Finding.Code.VARIANT_WITHOUT_RUN;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Production runs, and the years of other records against them. */
final class ProductionChecks {

  private final Records records;
  private final Known known;
  private final Report report;

  ProductionChecks(Records records, Known known, Report report) {
    this.records = records;
    this.known = known;
    this.report = report;
  }

  void run() {
    records.variants().forEach(this::check);
    for (SerialBlock block : records.blocks()) {
      within(block.variant(), "serial-blocks", block.key(), "year", block.year());
    }
    for (Change change : records.changes()) {
      for (CutIn cutIn : change.cutIns()) {
        String record = change.key() + "/" + cutIn.variant();
        within(cutIn.variant(), "cut-ins", record, "first_year", cutIn.firstYear());
        within(cutIn.variant(), "cut-ins", record, "settled_year", cutIn.settledYear());
      }
    }
  }

  private void check(Variant variant) {
    if (variant.runs().isEmpty()) {
      report.record(VARIANT_WITHOUT_RUN, "variants", variant.key());
    }
    for (ProductionRun run : variant.runs()) {
      String record = variant.key() + "/" + run.firstYear();
      ordered("production-runs", record, run.firstYear(), run.lastYear());
    }
    for (SoldName name : variant.names()) {
      String record = variant.key() + "/" + name.name();
      ordered("variant-names", record, name.firstYear(), name.lastYear());
      within(variant.key(), "variant-names", record, "first_year", name.firstYear());
      within(variant.key(), "variant-names", record, "last_year", name.lastYear());
    }
  }

  private void ordered(
      String table, String record, @Nullable Integer first, @Nullable Integer last) {
    if (first != null && last != null && first > last) {
      report.field(REVERSED_WINDOW, table, record, "last_year", last.toString(), first.toString());
    }
  }

  private void within(
      String variant, String table, String record, String field, @Nullable Integer year) {
    List<ProductionRun> runs = known.variant(variant).map(Variant::runs).orElse(List.of());
    if (year != null && !runs.isEmpty() && runs.stream().noneMatch(r -> r.covers(year))) {
      report.field(OUTSIDE_PRODUCTION, table, record, field, year.toString(), text(runs));
    }
  }

  private static String text(List<ProductionRun> runs) {
    return runs.stream()
        .map(r -> r.firstYear() + "-" + (r.lastYear() == null ? "" : r.lastYear()))
        .collect(Collectors.joining(", "));
  }
}
