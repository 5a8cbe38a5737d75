package club.yearline.exchange;

import club.yearline.effectivity.Finding;
import java.io.PrintWriter;

/** What commands say: results on standard output, progress on standard error. */
final class Console {

  static final int DONE = 0;
  static final int REFUSED = 1;
  static final int WRONG_USAGE = 2;

  private final PrintWriter results;
  private final PrintWriter progress;

  Console(PrintWriter results, PrintWriter progress) {
    this.results = results;
    this.progress = progress;
  }

  void result(String key, Object... arguments) {
    results.println(Texts.of(key, arguments));
    results.flush();
  }

  void progress(String key, Object... arguments) {
    progress.println(Texts.of(key, arguments));
    progress.flush();
  }

  /** Lists the problems of a package, and sums them up under the given key if it is refused. */
  void report(String path, PackageReading reading, String refused) {
    reading.problems().forEach(problem -> results.println(Texts.of(problem)));
    long errors = reading.count(Finding.Level.ERROR);
    long warnings = reading.count(Finding.Level.WARNING);
    long notes = reading.count(Finding.Level.NOTE);
    if (reading.isRefused()) {
      result(refused, path, errors, warnings, notes);
    } else {
      result(
          "report.clean",
          path,
          reading.rows(),
          reading.records().size(),
          reading.pictures().size(),
          warnings,
          notes);
    }
  }
}
