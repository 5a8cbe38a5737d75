package club.yearline.effectivity;

import static club.yearline.effectivity.Finding.Code.SERIES_OF_OTHER_FAMILY;
import static club.yearline.effectivity.Finding.Code.UNKNOWN_REFERENCE;

import club.yearline.citation.Citation;
import org.jspecify.annotations.Nullable;

/** Records that name something that does not exist, or a series of another family. */
final class ReferenceChecks {

  private final Records records;
  private final Known known;
  private final Report report;

  ReferenceChecks(Records records, Known known, Report report) {
    this.records = records;
    this.known = known;
    this.report = report;
  }

  void run() {
    records.variants().forEach(this::check);
    for (Series series : records.series()) {
      family("series", series.key(), series.family());
    }
    for (SerialBlock block : records.blocks()) {
      variant("serial-blocks", block.key(), "variant", block.variant());
      series("serial-blocks", block.key(), block.series(), block.variant());
    }
    for (Feature feature : records.features()) {
      feature
          .values()
          .forEach(v -> picture("feature-values", feature.key() + "/" + v.key(), v.picture()));
    }
    records.changes().forEach(this::check);
    for (Retrofit retrofit : records.retrofits()) {
      feature("retrofits", retrofit.key(), retrofit.feature());
      variant("retrofits", retrofit.key(), "variant", retrofit.variant());
      series("retrofits", retrofit.key(), retrofit.series(), retrofit.variant());
    }
    records.entries().forEach(e -> e.citations().forEach(this::check));
  }

  private void check(Variant variant) {
    family("variants", variant.key(), variant.family());
    picture("variants", variant.key(), variant.picture());
    for (Descent descent : variant.descent()) {
      variant("lineage", descent.from() + "/" + variant.key(), "from_variant", descent.from());
    }
  }

  private void check(Change change) {
    feature("changes", change.key(), change.feature());
    for (CutIn cutIn : change.cutIns()) {
      String record = change.key() + "/" + cutIn.variant();
      variant("cut-ins", record, "variant", cutIn.variant());
      series("cut-ins", record, cutIn.series(), cutIn.variant());
    }
  }

  private void check(Citation citation) {
    if (!known.source(citation.source())) {
      unknown("citations", citation.key(), "source", citation.source());
    }
    if (citation.variant() != null) {
      variant("citations", citation.key(), "variant", citation.variant());
    }
  }

  private void family(String table, String record, String key) {
    if (!known.family(key)) {
      unknown(table, record, "family", key);
    }
  }

  private void variant(String table, String record, String field, String key) {
    if (known.variant(key).isEmpty()) {
      unknown(table, record, field, key);
    }
  }

  private void feature(String table, String record, String key) {
    if (known.feature(key).isEmpty()) {
      unknown(table, record, "feature", key);
    }
  }

  private void picture(String table, String record, @Nullable String name) {
    if (name != null && !known.picture(name)) {
      unknown(table, record, "picture", name);
    }
  }

  private void series(String table, String record, @Nullable String key, String variant) {
    if (key == null) {
      return;
    }
    Series of = known.series(key).orElse(null);
    if (of == null) {
      unknown(table, record, "series", key);
      return;
    }
    known
        .variant(variant)
        .filter(v -> !v.family().equals(of.family()))
        .ifPresent(
            v ->
                report.field(
                    SERIES_OF_OTHER_FAMILY, table, record, "series", key, of.family(), v.family()));
  }

  private void unknown(String table, String record, String field, String value) {
    report.field(UNKNOWN_REFERENCE, table, record, field, value);
  }
}
