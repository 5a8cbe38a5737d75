package club.yearline.effectivity;

import static club.yearline.effectivity.Finding.Code.DUPLICATE_KEY;

import club.yearline.citation.Citation;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** Two records of a kind with one key; numbers are compared by value. */
final class KeyChecks {

  private final Records records;
  private final Report report;

  KeyChecks(Records records, Report report) {
    this.records = records;
    this.report = report;
  }

  void run() {
    unique(records.families());
    unique(records.variants());
    unique(records.series());
    unique(records.blocks());
    unique(records.features());
    unique(records.changes());
    unique(records.retrofits());
    unique(records.sources());
    Set<String> citations = new HashSet<>();
    for (Entry entry : records.entries()) {
      for (Citation citation : entry.citations()) {
        if (!citations.add(citation.key())) {
          report.field(DUPLICATE_KEY, "citations", citation.key(), "key", citation.key());
        }
      }
    }
    records.variants().forEach(this::partsOf);
    records
        .features()
        .forEach(f -> parts("feature-values", f.key(), "key", f.values(), FeatureValue::key));
    records.changes().forEach(this::partsOf);
  }

  private void partsOf(Variant variant) {
    parts("variant-names", variant.key(), "name", variant.names(), SoldName::name);
    parts(
        "production-runs",
        variant.key(),
        "first_year",
        variant.runs(),
        r -> Integer.toString(r.firstYear()));
    Set<String> older = new HashSet<>();
    for (Descent descent : variant.descent()) {
      if (!older.add(descent.from())) {
        String record = descent.from() + "/" + variant.key();
        report.field(DUPLICATE_KEY, "lineage", record, "from_variant", descent.from());
      }
    }
  }

  private void partsOf(Change change) {
    parts("change-offerings", change.key(), "value", change.offering(), Offered::canonicalValue);
    parts("cut-ins", change.key(), "variant", change.cutIns(), CutIn::variant);
  }

  private void unique(List<? extends Entry> entries) {
    Set<String> seen = new HashSet<>();
    for (Entry entry : entries) {
      if (!seen.add(entry.key())) {
        report.field(DUPLICATE_KEY, entry.kind().resource(), entry.key(), "key", entry.key());
      }
    }
  }

  private <T> void parts(
      String table, String owner, String field, List<T> parts, Function<T, String> key) {
    Set<String> seen = new HashSet<>();
    for (T part : parts) {
      if (!seen.add(key.apply(part))) {
        report.field(DUPLICATE_KEY, table, owner + "/" + key.apply(part), field, key.apply(part));
      }
    }
  }
}
