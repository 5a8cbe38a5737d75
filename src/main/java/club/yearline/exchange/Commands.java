package club.yearline.exchange;

import club.yearline.catalog.UnknownRevision;
import club.yearline.upkeep.UnusableBackup;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line of the packaged application, beside serving. */
@Command(
    name = "yearline",
    synopsisSubcommandLabel = "COMMAND",
    description = {
      "Serves the catalogue. With a command, does that instead and ends.",
      "Exit code 0: done. 1: refused, with the findings. 2: wrong usage.",
      "Settings come from the environment, such as SPRING_DATASOURCE_URL and SERVER_PORT."
    },
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
public final class Commands {

  private static final Set<String> HELP = Set.of("-h", "--help", "-V", "--version");

  /** H2: another process has the file open. */
  private static final String IN_USE = "90020";

  private Commands() {}

  /** Whether the arguments ask for a command; otherwise they are settings for serving. */
  public static boolean areAskedForBy(String... arguments) {
    return arguments.length > 0 && (!arguments[0].startsWith("-") || HELP.contains(arguments[0]));
  }

  /**
   * Carries out a command.
   *
   * @param application the application to start for commands that need the catalogue
   * @return the exit code: 0 done, 1 refused with findings, 2 wrong usage
   */
  public static int run(Class<?> application, String... arguments) {
    PrintWriter results = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter progress = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    return run(new Application(application), results, progress, arguments);
  }

  static int run(
      Application application, PrintWriter results, PrintWriter progress, String... arguments) {
    Console console = new Console(results, progress);
    return new CommandLine(new Commands())
        .addSubcommand(new ImportCommand(console, application))
        .addSubcommand(new ExportCommand(console, application))
        .addSubcommand(new CheckCommand(console))
        .addSubcommand(new GenerateCommand(console))
        .addSubcommand(new KeeperLinkCommand(console, application))
        .addSubcommand(new BackupCommand(console, application))
        .addSubcommand(new RestoreCommand(console, application))
        .addSubcommand(new TransferCommand(console, application))
        .setOut(results)
        .setErr(progress)
        .setExecutionExceptionHandler((e, line, parsed) -> explain(e, console))
        .execute(arguments);
  }

  /** Says what stood in the way; what nobody foresaw is thrown on, with its trace. */
  private static int explain(Exception e, Console console) throws Exception {
    if (e instanceof RefusedPackage refused) {
      console.report(
          refused.problem().file(), PackageReading.refused(refused.problem()), "report.refused");
      return Console.REFUSED;
    }
    if (e instanceof UnknownRevision unknown) {
      console.result("report.unknown-revision", String.valueOf(unknown.getMessage()));
      return Console.WRONG_USAGE;
    }
    if (e instanceof UnusableBackup unusable) {
      console.result("backup." + unusable.code(), unusable.arguments());
      return Console.REFUSED;
    }
    if (IN_USE.equals(sqlState(e))) {
      console.result("backup.in-use");
      return Console.REFUSED;
    }
    if (e instanceof IOException) {
      console.result("report.unreadable", e);
      return Console.REFUSED;
    }
    throw e;
  }

  private static @Nullable String sqlState(Throwable e) {
    for (Throwable cause = e; cause != null; cause = cause.getCause()) {
      if (cause instanceof SQLException known) {
        return known.getSQLState();
      }
    }
    return null;
  }
}
