package club.yearline.exchange;

import club.yearline.catalog.Revision;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.springframework.context.ApplicationContext;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Publishes a package as one revision. */
@Command(
    name = "import",
    description = {
      "Publishes a data package, a folder or a zip, as one revision.",
      "Works on an empty or a filled catalogue: entries and pictures of the package replace those"
          + " of the same key or name, all others stay. Nothing is stored if anything is wrong."
    },
    mixinStandardHelpOptions = true)
final class ImportCommand implements Callable<Integer> {

  private final Console console;
  private final Application application;

  @Parameters(paramLabel = "PATH", description = "Folder or zip to read.")
  @SuppressWarnings("NullAway.Init")
  private Path path;

  ImportCommand(Console console, Application application) {
    this.console = console;
    this.application = application;
  }

  @Override
  public Integer call() throws IOException {
    console.progress("progress.reading", path);
    try (PackageFiles files = PackageFiles.at(path)) {
      PackageReading reading = new PackageReader(files).read();
      // What is refused by itself needs no database to say so.
      return reading.isRefused() ? refuse(reading) : publish(files, reading);
    }
  }

  private int publish(PackageFiles files, PackageReading reading) throws IOException {
    console.progress("progress.starting");
    return application.run(context -> publish(context, files, reading));
  }

  private int publish(ApplicationContext context, PackageFiles files, PackageReading reading)
      throws IOException {
    console.progress("progress.publishing");
    String note = Texts.of("import.note", path.toAbsolutePath().getFileName());
    Imported imported = context.getBean(Importing.class).publish(files, reading, note);
    Revision revision = imported.revision();
    if (revision == null) {
      return refuse(imported.reading());
    }
    console.report(path.toString(), imported.reading(), "report.refused");
    console.result("report.imported", revision.number());
    return Console.DONE;
  }

  private int refuse(PackageReading reading) {
    console.report(path.toString(), reading, "report.refused");
    return Console.REFUSED;
  }
}
