package club.yearline.exchange;

import club.yearline.effectivity.Finding.Level;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is wrong or doubtful about an uploaded package, as a page shows it.
 *
 * @param name what the package is called
 * @param errors how many errors there are
 * @param warnings how many warnings
 * @param notes how many notes
 * @param lines the gravest, by place
 * @param more how many are not shown
 */
record ReportView(String name, long errors, long warnings, long notes, List<Line> lines, int more) {

  /** More than anybody mends before trying again. */
  private static final int SHOWN = 300;

  /** How much of a faulty value is repeated. */
  private static final int ECHO = 80;

  /**
   * One problem.
   *
   * @param level code of how grave it is
   * @param file the file in the package
   * @param line where its row begins; null where no row is meant
   * @param column the column at fault; null where none is
   * @param value the value at fault; null where there is none
   * @param what what is wrong and what to do
   */
  record Line(
      String level,
      String file,
      @Nullable Integer line,
      @Nullable String column,
      @Nullable String value,
      String what) {}

  static ReportView of(String name, PackageReading reading) {
    List<PackageProblem> all = reading.problems();
    return new ReportView(
        name,
        reading.count(Level.ERROR),
        reading.count(Level.WARNING),
        reading.count(Level.NOTE),
        all.stream().limit(SHOWN).map(ReportView::line).toList(),
        Math.max(0, all.size() - SHOWN));
  }

  private static Line line(PackageProblem problem) {
    return new Line(
        problem.level().code(),
        problem.file(),
        problem.line(),
        problem.column(),
        shortened(problem.value()),
        Texts.what(problem));
  }

  private static @Nullable String shortened(@Nullable String value) {
    return value == null || value.length() <= ECHO ? value : value.substring(0, ECHO) + "…";
  }
}
