package club.yearline.effectivity;

import static club.yearline.effectivity.Finding.Code.EMPTY_OFFERING;
import static club.yearline.effectivity.Finding.Code.TAKE_RATE_MISUSED;
import static club.yearline.effectivity.Finding.Code.UNSOURCED;
import static club.yearline.effectivity.Finding.Code.VALUE_OF_OTHER_FEATURE;

import club.yearline.citation.Citation;
import java.math.BigDecimal;

/** What changes offer and retrofits install, and on what evidence. */
final class ValueChecks {

  private final Records records;
  private final Known known;
  private final Report report;

  ValueChecks(Records records, Known known, Report report) {
    this.records = records;
    this.known = known;
    this.report = report;
  }

  void run() {
    records.changes().forEach(this::check);
    for (Retrofit retrofit : records.retrofits()) {
      value("retrofits", retrofit.key(), retrofit.feature(), retrofit.value());
    }
  }

  private void check(Change change) {
    if (change.offering().isEmpty()) {
      report.record(EMPTY_OFFERING, "changes", change.key());
    }
    if (change.citations().stream().noneMatch(Citation::supports)) {
      report.record(UNSOURCED, "changes", change.key());
    }
    BigDecimal together = BigDecimal.ZERO;
    for (Offered offered : change.offering()) {
      value(
          "change-offerings",
          change.key() + "/" + offered.value(),
          change.feature(),
          offered.value());
      together = together.add(rate(change, offered));
    }
    if (together.compareTo(BigDecimal.ONE) > 0) {
      report.record(TAKE_RATE_MISUSED, "changes", change.key(), together.toPlainString());
    }
  }

  private BigDecimal rate(Change change, Offered offered) {
    BigDecimal rate = offered.takeRate();
    if (rate != null && offered.fit() == Fit.STANDARD) {
      String record = change.key() + "/" + offered.value();
      report.field(
          TAKE_RATE_MISUSED, "change-offerings", record, "take_rate", rate.toPlainString());
    }
    return rate == null || offered.fit() == Fit.STANDARD ? BigDecimal.ZERO : rate;
  }

  private void value(String table, String record, String featureKey, String value) {
    known
        .feature(featureKey)
        .filter(f -> f.isNumber() ? Values.number(value).isEmpty() : f.value(value).isEmpty())
        .ifPresent(
            f -> report.field(VALUE_OF_OTHER_FEATURE, table, record, "value", value, f.key()));
  }
}
