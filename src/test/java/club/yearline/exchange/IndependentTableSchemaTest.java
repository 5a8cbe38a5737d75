package club.yearline.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.abort;

import club.yearline.tables.Schemas;
import club.yearline.testing.Catalogues;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Written packages against an implementation of Table Schema that is not ours: npm {@code
 * datapackage} with {@code tableschema}, versions in {@code src/test/node/package.json}.
 */
class IndependentTableSchemaTest {

  private static final Path SCRIPTS = Path.of("src", "test", "node");
  private static final Path INSTALLED = Path.of("target", "node").toAbsolutePath();

  @TempDir Path folder;

  /** What a program printed, and how it ended. */
  private record Ended(int code, String output) {}

  @BeforeAll
  static void install() throws IOException, InterruptedException {
    for (String program : List.of("node", "npm")) {
      if (!isThere(program)) {
        abort("No " + program + " on this machine: the independent check was not run");
      }
    }
    Files.createDirectories(INSTALLED);
    for (String file : List.of("package.json", "validate.js")) {
      Files.copy(
          SCRIPTS.resolve(file), INSTALLED.resolve(file), StandardCopyOption.REPLACE_EXISTING);
    }
    if (!Files.isDirectory(INSTALLED.resolve("node_modules").resolve("datapackage"))) {
      Ended npm =
          run(
              List.of(
                  "npm", "install", "--no-audit", "--no-fund", "--no-package-lock", "--silent"));
      assertThat(npm.code()).as(npm.output()).isZero();
    }
  }

  private static boolean isThere(String program) throws InterruptedException {
    try {
      return run(List.of(program, "--version")).code() == 0;
    } catch (IOException notFound) {
      return false;
    }
  }

  private static Ended run(List<String> command) throws IOException, InterruptedException {
    Files.createDirectories(INSTALLED);
    Path output = Files.createTempFile(INSTALLED, "output", ".txt");
    Process process =
        new ProcessBuilder(command)
            .directory(INSTALLED.toFile())
            .redirectErrorStream(true)
            .redirectOutput(output.toFile())
            .start();
    if (!process.waitFor(5, TimeUnit.MINUTES)) {
      process.destroyForcibly();
      throw new IOException("Still running after five minutes: " + command);
    }
    String text = Files.readString(output);
    Files.delete(output);
    return new Ended(process.exitValue(), text);
  }

  private static Ended validate(Path packageFolder) throws IOException, InterruptedException {
    return run(
        List.of(
            "node",
            "validate.js",
            packageFolder.resolve(Schemas.DESCRIPTOR).toAbsolutePath().toString()));
  }

  @Test
  void theDemoIsValid() throws IOException, InterruptedException {
    Ended ended = validate(Path.of("seed-data", "demo"));
    assertThat(ended.output()).contains("15 tables").contains(" 0 faults");
    assertThat(ended.code()).isZero();
  }

  @Test
  void writtenCataloguesAreValid() throws IOException, InterruptedException {
    for (long seed = 0; seed < 5; seed++) {
      Path written = Packages.write(Catalogues.random(seed), folder.resolve("seed-" + seed));
      Ended ended = validate(written);
      assertThat(ended.output()).as("seed " + seed).endsWith(" 0 faults\n");
    }
  }

  /** Otherwise a validator that takes everything would pass the tests above. */
  @Test
  void whatIsRefusedHereIsRefusedThereToo() throws IOException, InterruptedException {
    Path written = Packages.write(Catalogues.random(1), folder.resolve("written"));
    Path families = written.resolve("families.csv");
    Files.writeString(
        families, Files.readString(families).replaceAll("model-year|manufacture", "fiscal"));
    assertThat(PackageReader.read(written).isRefused()).isTrue();
    Ended ended = validate(written);
    assertThat(ended.code()).isEqualTo(1);
    assertThat(ended.output()).contains("families");
  }
}
