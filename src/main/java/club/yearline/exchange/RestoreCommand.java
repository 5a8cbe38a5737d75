package club.yearline.exchange;

import club.yearline.upkeep.BackupFile;
import club.yearline.upkeep.Restore;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.concurrent.Callable;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.springframework.context.ApplicationContext;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Fills an empty database from a backup. */
@Command(
    name = "restore",
    description = {
      "Fills an empty database, embedded or PostgreSQL, from a backup of either, made by this or an"
          + " earlier version. The backup is read to its end and checked first; what was stored is"
          + " compared with it afterwards. Everybody has to sign in again."
    },
    mixinStandardHelpOptions = true)
final class RestoreCommand implements Callable<Integer> {

  private final Console console;
  private final Application application;

  @Parameters(paramLabel = "PATH", description = "The zip that a backup wrote.")
  @SuppressWarnings("NullAway.Init")
  private Path path;

  RestoreCommand(Console console, Application application) {
    this.console = console;
    this.application = application;
  }

  @Override
  public Integer call() throws IOException {
    console.progress("progress.checking-backup", path);
    try (BackupFile backup = BackupFile.open(path)) {
      console.progress("progress.restoring", backup.made());
      application.storage().run(context -> restore(context, backup));
      console.result("report.restored", backup.rows(), backup.made());
      return Console.DONE;
    }
  }

  /** Fills the database of a context, which has not migrated it. */
  static int restore(ApplicationContext context, BackupFile backup) throws IOException {
    try {
      new Restore(context.getBean(Flyway.class), context.getBean(DataSource.class)).from(backup);
      return Console.DONE;
    } catch (SQLException e) {
      throw new IOException(e);
    }
  }
}
