package club.yearline.exchange;

import club.yearline.upkeep.Backup;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.concurrent.Callable;
import javax.sql.DataSource;
import org.springframework.context.ApplicationContext;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Writes all that is stored into one file. */
@Command(
    name = "backup",
    description = {
      "Writes all that is stored (catalogue with all revisions, accounts, corrections, register,"
          + " files) into one zip, of one moment, while people work.",
      "The embedded database is open to one process at a time: with it, stop the server before, or"
          + " take the backup from the keeper's page."
    },
    mixinStandardHelpOptions = true)
final class BackupCommand implements Callable<Integer> {

  private final Console console;
  private final Application application;

  @Parameters(paramLabel = "PATH", description = "The zip to write; nothing may be there yet.")
  @SuppressWarnings("NullAway.Init")
  private Path path;

  BackupCommand(Console console, Application application) {
    this.console = console;
    this.application = application;
  }

  @Override
  public Integer call() throws IOException {
    console.progress("progress.starting");
    long rows = application.storage().run(context -> write(context, path));
    console.result("report.backed-up", rows, path);
    return Console.DONE;
  }

  /** Backs up the database of a context. */
  static long write(ApplicationContext context, Path path) throws IOException {
    try {
      return new Backup(context.getBean(DataSource.class)).write(path);
    } catch (SQLException e) {
      throw new IOException(e);
    }
  }
}
