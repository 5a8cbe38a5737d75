package club.yearline.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.Yearline;
import club.yearline.testing.Catalogues;
import club.yearline.testing.Database;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The command line, down to the database. */
class CommandsTest {

  @TempDir Path folder;

  private final StringWriter results = new StringWriter();
  private final StringWriter progress = new StringWriter();
  private Database database;

  @BeforeEach
  void freshDatabase() {
    database = Database.h2();
  }

  private int run(Object... arguments) {
    String[] texts = new String[arguments.length];
    for (int i = 0; i < texts.length; i++) {
      texts[i] = arguments[i].toString();
    }
    Application application =
        new Application(
            Yearline.class,
            "--spring.datasource.url=" + database.url(),
            "--spring.datasource.username=" + database.user(),
            "--spring.datasource.password=" + database.password());
    return Commands.run(
        application, new PrintWriter(results, true), new PrintWriter(progress, true), texts);
  }

  @Test
  void whoRunsTheServerGetsALinkToBecomeKeeper() {
    assertThat(run("keeper-link")).isEqualTo(Console.DONE);
    assertThat(results.toString()).matches("/set-up/[\\w-]{43}\\R");
    assertThat(progress.toString()).contains("becomes keeper");
  }

  @Test
  void whatWasImportedIsExportedByteForByteTwice() throws IOException {
    Path original = Packages.write(Catalogues.random(7), folder.resolve("original"));
    assertThat(run("import", original)).isEqualTo(Console.DONE);
    assertThat(run("export", folder.resolve("first"))).isEqualTo(Console.DONE);
    freshDatabase();
    assertThat(run("import", folder.resolve("first"))).isEqualTo(Console.DONE);
    assertThat(run("export", folder.resolve("second"))).isEqualTo(Console.DONE);
    assertThat(Packages.contents(folder.resolve("first"))).isEqualTo(Packages.contents(original));
    assertThat(Packages.contents(folder.resolve("second"))).isEqualTo(Packages.contents(original));
    assertThat(results.toString()).contains("Published as revision 1.");
    assertThat(progress.toString()).contains("Publishing …");
  }

  @Test
  void anImportAddsToAFilledCatalogueAndPastRevisionsStay() throws IOException {
    assertThat(run("import", Packages.clean().zip(folder.resolve("clean.zip")))).isZero();
    Packages more =
        Packages.clean()
            .with("families.csv", "key,maker,name,year_means\np,Lindmark Aero,Plover,model-year\n");
    Packages only = more.without("variants.csv");
    for (String table :
        new String[] {
          "production_runs",
          "series",
          "serial_blocks",
          "features",
          "feature_values",
          "changes",
          "change_offerings",
          "cut_ins",
          "sources",
          "citations"
        }) {
      only.without(table + ".csv");
    }
    assertThat(run("import", only.folder(folder.resolve("more")))).isZero();
    assertThat(run("export", folder.resolve("head"))).isZero();
    assertThat(run("export", folder.resolve("past.zip"), "--rev", 1)).isZero();
    assertThat(Packages.contents(folder.resolve("head")).get("families.csv"))
        .contains("\np,Lindmark Aero,Plover,")
        .contains("\nturnstone,Lindmark Aero,Turnstone,");
    assertThat(PackageReader.read(folder.resolve("past.zip")).records().families()).hasSize(1);
    assertThat(run("export", folder.resolve("never"), "--rev", 9)).isEqualTo(Console.WRONG_USAGE);
    assertThat(results.toString()).contains("There is no revision 9; the highest is 2.");
    assertThat(folder.resolve("never")).doesNotExist();
  }

  @Test
  void whatDoesNotGoWithTheCatalogueIsRefusedAtItsPlace() throws IOException {
    assertThat(run("import", Packages.clean().folder(folder.resolve("clean")))).isZero();
    Packages clash =
        Packages.clean()
            .with(
                "serial_blocks.csv",
                "key,series,first_serial,last_serial,variant,year\n"
                    + "lt-other,lt,LT-0050,LT-0060,la-2b,1965\n");
    assertThat(run("import", clash.folder(folder.resolve("clash")))).isEqualTo(Console.REFUSED);
    assertThat(results.toString())
        .contains("error serial_blocks.csv, line 2, column first_serial: \"LT-0050\"")
        .contains("Nothing was stored.");
    assertThat(run("export", folder.resolve("out"))).isZero();
    assertThat(results.toString()).contains("Wrote revision 1 to");
  }

  @Test
  void aRefusedPackageIsReportedOnStandardOutput() throws IOException {
    Path bad = Packages.clean().adding("sources.csv", "a,novel,T").folder(folder.resolve("bad"));
    assertThat(run("import", bad)).isEqualTo(Console.REFUSED);
    assertThat(results.toString())
        .contains("error sources.csv, line 3, column kind: \"novel\" - This must be one of")
        .contains("refused with 1 errors");
    assertThat(run("check", bad)).isEqualTo(Console.REFUSED);
    assertThat(run("check", folder.resolve("missing.zip"))).isEqualTo(Console.REFUSED);
    assertThat(progress.toString()).doesNotContain("novel");
  }

  @Test
  void nothingIsOverwritten() throws IOException {
    Path taken = Files.writeString(folder.resolve("taken.zip"), "mine");
    assertThat(run("generate", taken, "--families", 1, "--seed", 1)).isEqualTo(Console.REFUSED);
    assertThat(taken).hasContent("mine");
    assertThat(results.toString()).contains("Choose another name");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "frob",
        "import",
        "check",
        "export",
        "check a b",
        "generate x",
        "import --rev 1 x"
      })
  void wrongUsageIsExplainedAndToldByTheExitCode(String line) {
    assertThat(run((Object[]) line.split(" "))).isEqualTo(Console.WRONG_USAGE);
    assertThat(progress.toString()).contains("Usage: yearline");
  }

  @Test
  void helpSaysWhatThereIs() {
    assertThat(run("--help")).isEqualTo(Console.DONE);
    assertThat(results.toString()).contains("import", "export", "check", "generate");
  }

  @Test
  void settingsAloneMeanServing() {
    assertThat(Commands.areAskedForBy()).isFalse();
    assertThat(Commands.areAskedForBy("--server.port=8081")).isFalse();
    assertThat(Commands.areAskedForBy("check", "x")).isTrue();
    assertThat(Commands.areAskedForBy("--help")).isTrue();
  }
}
