package club.yearline.exchange;

import club.yearline.upkeep.BackupFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Moves all that is stored to another database. */
@Command(
    name = "transfer",
    description = {
      "Copies all that is stored into another, empty database, from the embedded one to PostgreSQL"
          + " or back, and compares both. The one copied from stays as it is: stop the server"
          + " before, and start it on the other one afterwards."
    },
    mixinStandardHelpOptions = true)
final class TransferCommand implements Callable<Integer> {

  private static final String EMBEDDED =
      ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH";

  private final Console console;
  private final Application application;

  @Option(names = "--to", paramLabel = "JDBC-URL", required = true, description = "Where to.")
  @SuppressWarnings("NullAway.Init")
  private String to;

  @Option(names = "--user", paramLabel = "NAME", description = "User of the other database.")
  private @Nullable String user;

  @Option(
      names = "--password-file",
      paramLabel = "PATH",
      description = "File with that user's password.")
  private @Nullable Path passwordFile;

  TransferCommand(Console console, Application application) {
    this.console = console;
    this.application = application;
  }

  @Override
  public Integer call() throws IOException {
    Path carried = Files.createTempDirectory("yearline").resolve("transfer.zip");
    try {
      console.progress("progress.starting");
      application.storage().run(context -> BackupCommand.write(context, carried));
      try (BackupFile backup = BackupFile.open(carried)) {
        console.progress("progress.restoring", backup.made());
        application.storage(other()).run(context -> RestoreCommand.restore(context, backup));
        console.result("report.transferred", backup.rows());
        return Console.DONE;
      }
    } finally {
      Files.deleteIfExists(carried);
      Files.deleteIfExists(carried.getParent());
    }
  }

  private String[] other() throws IOException {
    String password = passwordFile == null ? "" : Files.readString(passwordFile).strip();
    return new String[] {
      "--spring.datasource.url=" + url(),
      "--spring.datasource.username=" + (user == null ? "" : user),
      "--spring.datasource.password=" + password
    };
  }

  /** The embedded database works for us in one mode only, which nobody should have to type. */
  private String url() {
    return to.startsWith("jdbc:h2:") && !to.contains(";MODE=") ? to + EMBEDDED : to;
  }
}
