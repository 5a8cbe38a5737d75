package club.yearline.effectivity;

import java.util.List;

/**
 * Checks the consistency of a catalogue's records (domain section 6).
 *
 * <p>What needs a compiled catalogue (windows, baselines, axes) is looked at only where the records
 * have no error, because before that there is nothing to compile.
 */
public final class Findings {

  private Findings() {}

  /** Everything wrong or doubtful about the records, gravest first, in a stable order. */
  public static List<Finding> in(Records records) {
    Report report = new Report();
    Known known = new Known(records);
    new KeyChecks(records, report).run();
    new ReferenceChecks(records, known, report).run();
    new ValueChecks(records, known, report).run();
    new CutInChecks(records, known, report).run();
    new BlockChecks(records, known, report).run();
    new ProductionChecks(records, known, report).run();
    if (!report.hasErrors()) {
      new TimelineChecks(Catalogue.of(records), report).run();
    }
    return report.sorted();
  }
}
