package club.yearline.exchange;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Checks a package and stores nothing. */
@Command(
    name = "check",
    description = "Says all that is wrong with a data package. Needs no database; stores nothing.",
    mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(paramLabel = "PATH", description = "Folder or zip to read.")
  @SuppressWarnings("NullAway.Init")
  private Path path;

  CheckCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws IOException {
    console.progress("progress.reading", path);
    PackageReading reading = PackageReader.read(path);
    console.report(path.toString(), reading, "report.checked");
    return reading.isRefused() ? Console.REFUSED : Console.DONE;
  }
}
