package club.yearline.effectivity;

import static club.yearline.effectivity.Finding.Code.EMPTY_CUT_IN;
import static club.yearline.effectivity.Finding.Code.REVERSED_WINDOW;
import static club.yearline.effectivity.Finding.Code.UNREADABLE_SERIAL;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The ends of cut-ins, and the years and serials of retrofits. */
final class CutInChecks {

  private final Records records;
  private final Known known;
  private final Report report;

  CutInChecks(Records records, Known known, Report report) {
    this.records = records;
    this.known = known;
    this.report = report;
  }

  void run() {
    Map<String, String> starts = new HashMap<>();
    for (Change change : records.changes()) {
      for (CutIn cutIn : change.cutIns()) {
        String record = change.key() + "/" + cutIn.variant();
        ends(record, cutIn);
        years("cut-ins", record, "settled_year", cutIn.firstYear(), cutIn.settledYear());
        serials(
            "cut-ins",
            record,
            cutIn.series(),
            new Serials(
                "first_serial", cutIn.firstSerial(), "settled_serial", cutIn.settledSerial()));
        if (cutIn.atStart()) {
          String other = starts.put(change.feature() + "/" + cutIn.variant(), change.key());
          if (other != null && !other.equals(change.key())) {
            report.field(EMPTY_CUT_IN, "cut-ins", record, "at_start", "true", other);
          }
        }
      }
    }
    records.retrofits().forEach(this::check);
  }

  private void ends(String record, CutIn cutIn) {
    boolean more = cutIn.hasEnd() || cutIn.series() != null;
    if (cutIn.atStart() ? more : !cutIn.hasEnd()) {
      report.record(EMPTY_CUT_IN, "cut-ins", record);
    }
  }

  private void check(Retrofit retrofit) {
    years("retrofits", retrofit.key(), "last_year", retrofit.firstYear(), retrofit.lastYear());
    serials(
        "retrofits",
        retrofit.key(),
        retrofit.series(),
        new Serials("first_serial", retrofit.firstSerial(), "last_serial", retrofit.lastSerial()));
  }

  private void years(
      String table, String record, String field, @Nullable Integer first, @Nullable Integer last) {
    if (first != null && last != null && first > last) {
      report.field(REVERSED_WINDOW, table, record, field, last.toString(), first.toString());
    }
  }

  private void serials(String table, String record, @Nullable String series, Serials both) {
    readable(table, record, series, both.firstField, both.first);
    readable(table, record, series, both.lastField, both.last);
    Optional<Serial> first = known.serial(series, both.first);
    Optional<Serial> last = known.serial(series, both.last);
    if (first.isPresent() && last.isPresent() && last.get().isBelow(first.get())) {
      report.field(
          REVERSED_WINDOW, table, record, both.lastField, both.last, String.valueOf(both.first));
    }
  }

  private void readable(
      String table, String record, @Nullable String series, String field, @Nullable String text) {
    boolean seriesKnown = series == null || known.series(series).isPresent();
    if (text != null && seriesKnown && known.serial(series, text).isEmpty()) {
      report.field(UNREADABLE_SERIAL, table, record, field, text, series == null ? "" : series);
    }
  }

  /** Two serials with the columns they stand in. */
  private record Serials(
      String firstField, @Nullable String first, String lastField, @Nullable String last) {}
}
