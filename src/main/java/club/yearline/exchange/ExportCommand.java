package club.yearline.exchange;

import club.yearline.catalog.Snapshot;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a revision as a package. */
@Command(
    name = "export",
    description = "Writes the catalogue as a data package; equal catalogues make equal bytes.",
    mixinStandardHelpOptions = true)
final class ExportCommand implements Callable<Integer> {

  private final Console console;
  private final Application application;

  @Parameters(
      paramLabel = "PATH",
      description = "What to write: a zip where the name ends in .zip, else a folder.")
  @SuppressWarnings("NullAway.Init")
  private Path path;

  @Option(
      names = "--rev",
      paramLabel = "N",
      description = "Revision to write; the newest if left out.")
  private @Nullable Integer revision;

  ExportCommand(Console console, Application application) {
    this.console = console;
    this.application = application;
  }

  @Override
  public Integer call() throws IOException {
    console.progress("progress.starting");
    return application.run(context -> export(context.getBean(Exporting.class)));
  }

  private int export(Exporting exporting) throws IOException {
    Snapshot snapshot = exporting.at(revision);
    console.progress("progress.exporting", path);
    Outputs.write(path, target -> exporting.write(snapshot, target));
    console.result("report.exported", snapshot.number(), path);
    return Console.DONE;
  }
}
