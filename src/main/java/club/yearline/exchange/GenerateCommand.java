package club.yearline.exchange;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a large invented catalogue. */
@Command(
    name = "generate",
    description = {
      "Writes a large invented catalogue as a data package, for measuring; equal seeds make equal"
          + " bytes. Needs no database.",
      "A family makes 999 rows, what they share 1,000; a package may have 1,000,000."
    },
    mixinStandardHelpOptions = true)
final class GenerateCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(
      paramLabel = "PATH",
      description = "What to write: a zip where the name ends in .zip, else a folder.")
  @SuppressWarnings("NullAway.Init")
  private Path path;

  @Option(
      names = "--families",
      paramLabel = "N",
      required = true,
      description = "How many families, 1 to 1000.")
  private int families;

  @Option(
      names = "--seed",
      paramLabel = "S",
      required = true,
      description = "Any whole number; the catalogue follows from it.")
  private long seed;

  @Spec
  @SuppressWarnings("NullAway.Init")
  private CommandSpec spec;

  GenerateCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws IOException {
    if (families < 1 || families > Generator.MOST_FAMILIES) {
      throw new ParameterException(
          spec.commandLine(), Texts.of("usage.families", Generator.MOST_FAMILIES));
    }
    int rows = new Generator(seed, families, console).writeTo(path);
    console.result("report.generated", rows, path);
    return Console.DONE;
  }
}
