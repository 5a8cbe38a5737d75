package club.yearline.exchange;

import club.yearline.catalog.PictureFile;
import club.yearline.effectivity.Finding;
import club.yearline.effectivity.Records;
import java.util.List;

/**
 * What was read of a package.
 *
 * @param records its entries; whole only where it has no errors
 * @param pictures its pictures
 * @param rows how many rows its tables have
 * @param problems everything wrong or doubtful about it, gravest first, then by place
 */
record PackageReading(
    Records records, List<PictureFile> pictures, int rows, List<PackageProblem> problems) {

  PackageReading {
    pictures = List.copyOf(pictures);
    problems = List.copyOf(problems);
  }

  /** Nothing could be read, for this reason. */
  static PackageReading refused(PackageProblem problem) {
    return new PackageReading(Records.NONE, List.of(), 0, List.of(problem));
  }

  /** The same, with other problems. */
  PackageReading with(List<PackageProblem> others) {
    return new PackageReading(records, pictures, rows, others);
  }

  /** Whether any problem keeps the package out. */
  boolean isRefused() {
    return problems.stream().anyMatch(PackageProblem::isError);
  }

  /** How many problems are of the given level. */
  long count(Finding.Level level) {
    return problems.stream().filter(p -> p.level() == level).count();
  }
}
