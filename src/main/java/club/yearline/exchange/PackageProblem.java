package club.yearline.exchange;

import club.yearline.effectivity.Finding;
import club.yearline.tables.Complaint;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something wrong or doubtful about a data package, and where.
 *
 * @param file the file inside the package, or the package itself
 * @param line line on which the row begins, from 1; null where the whole file is meant
 * @param column the column at fault; null where the whole row is meant
 * @param value the value at fault; null where there is none
 * @param code what it is
 * @param level how grave it is; errors keep the package out
 * @param arguments what its text names
 */
record PackageProblem(
    String file,
    @Nullable Integer line,
    @Nullable String column,
    @Nullable String value,
    String code,
    Finding.Level level,
    List<String> arguments) {

  /** The order of reports: gravest first, then by place. */
  static final Comparator<PackageProblem> GRAVEST_FIRST =
      Comparator.comparing(PackageProblem::level)
          .thenComparing(PackageProblem::file)
          .thenComparing(p -> p.line() == null ? 0 : p.line())
          .thenComparing(p -> p.column() == null ? "" : p.column())
          .thenComparing(PackageProblem::code);

  PackageProblem {
    arguments = List.copyOf(arguments);
  }

  /** An error of a whole file or package. */
  static PackageProblem of(String file, String code, Object... arguments) {
    return at(file, null, null, null, Complaint.of(code, arguments));
  }

  /** An error at a place. */
  static PackageProblem at(
      String file,
      @Nullable Integer line,
      @Nullable String column,
      @Nullable String value,
      Complaint complaint) {
    return new PackageProblem(
        file, line, column, value, complaint.code(), Finding.Level.ERROR, complaint.arguments());
  }

  boolean isError() {
    return level == Finding.Level.ERROR;
  }
}
