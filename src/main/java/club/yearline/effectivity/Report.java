package club.yearline.effectivity;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Collects findings. */
final class Report {

  private final List<Finding> findings = new ArrayList<>();
  private boolean errors;

  /** Adds a finding about one field of a record. */
  void field(
      Finding.Code code,
      String table,
      String record,
      String field,
      @Nullable String value,
      String... arguments) {
    add(new Finding(code, table, record, field, value, List.of(arguments)));
  }

  /** Adds a finding about a whole record. */
  void record(Finding.Code code, String table, String record, String... arguments) {
    add(new Finding(code, table, record, null, null, List.of(arguments)));
  }

  private void add(Finding finding) {
    findings.add(finding);
    errors |= finding.isError();
  }

  boolean hasErrors() {
    return errors;
  }

  List<Finding> sorted() {
    return findings.stream().sorted().toList();
  }
}
