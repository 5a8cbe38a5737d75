package club.yearline.catalog;

import club.yearline.effectivity.Finding;
import java.util.List;

/** The records that a publication would make have errors; nothing was stored. */
public class RefusedPublication extends RuntimeException {

  private final transient List<Finding> findings;

  RefusedPublication(List<Finding> findings) {
    super(message(findings));
    this.findings = List.copyOf(findings);
  }

  /** Everything found wrong or doubtful about the resulting records, gravest first. */
  public List<Finding> findings() {
    return findings;
  }

  private static String message(List<Finding> findings) {
    List<Finding> errors = findings.stream().filter(Finding::isError).toList();
    return "Not published: "
        + errors.size()
        + (errors.size() == 1 ? " error" : " errors")
        + " among the resulting records, first "
        + errors.get(0);
  }
}
