package club.yearline.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import club.yearline.tables.Schemas;
import club.yearline.tables.TableSchema;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is wrong with tables is told with file, line, column, value and what to do. */
class BadPackagesTest {

  @TempDir Path folder;

  private List<PackageProblem> problems(Packages files) throws IOException {
    return PackageReader.read(files.folder(folder.resolve("package"))).problems();
  }

  private List<String> errors(Packages files) throws IOException {
    return problems(files).stream().filter(PackageProblem::isError).map(Texts::of).toList();
  }

  @Test
  void aCleanPackageHasNoProblem() throws IOException {
    assertThat(problems(Packages.clean())).isEmpty();
  }

  @Test
  void markAndLineEndsOfOtherSystemsAreTaken() throws IOException {
    String families =
        "\ufeffname,key,maker,year_means\r\nTurnstone,turnstone,Lindmark Aero,model-year\r\n\r\n";
    PackageReading reading =
        PackageReader.read(
            Packages.clean().with("families.csv", families).folder(folder.resolve("p")));
    assertThat(reading.problems()).isEmpty();
    assertThat(reading.records().families().get(0).name()).isEqualTo("Turnstone");
  }

  @Test
  void everyProblemOfAPackageIsInOneReport() throws IOException {
    Packages files =
        Packages.clean()
            .adding("families.csv", "Bad Key,Lindmark Aero,Other,fiscal-year")
            .adding("production_runs.csv", "la-2b,1899,")
            .adding("serial_blocks.csv", "lt-x,lt,LT-0150,LT-0160,la-2b,1966")
            .adding("cut_ins.csv", "door-latch-rotary,la-9,,1966,1966")
            .adding("variants.csv", "la-3,plover,");
    assertThat(errors(files))
        .containsExactlyInAnyOrder(
            "error families.csv, line 3, column key: \"Bad Key\" - This does not have the form asked"
                + " for: stable key: lower-case words joined by hyphens. It must match"
                + " ^[a-z0-9]+(-[a-z0-9]+)*$.",
            "error families.csv, line 3, column year_means: \"fiscal-year\" - This must be one of"
                + " model-year, manufacture.",
            "error production_runs.csv, line 3, column first_year: \"1899\" - The number must be from"
                + " 1903 to 2200.",
            "error serial_blocks.csv, line 4, column first_serial: \"LT-0150\" - The block shares"
                + " serials with block lt-1966, and they are not both marked intermixed. Correct the"
                + " serials, or mark both.",
            "error cut_ins.csv, line 4, column variant: \"la-9\" - There is no such record. Correct"
                + " the key, or add what it names.",
            "error variants.csv, line 3, column family: \"plover\" - There is no such record. Correct"
                + " the key, or add what it names.",
            "error variants.csv, line 3, column designation: \"\" - The cell is empty and must not be"
                + " (as on the type certificate).");
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '\'',
      textBlock =
          """
          sources.csv,        's,book,Title,,,,1966-13,,,',       bad-edtf,         issued
          sources.csv,        's,book,Title,,,,,ftp://x.org,,',   bad-url,          url
          sources.csv,        's,book,Title,,,,,javascript:1,,',  bad-url,          url
          sources.csv,        's,book,Title,,,,,http:///nohost,,', bad-url,         url
          sources.csv,        's,book,Title,,,,,,2023-02-30,',    bad-date,         accessed
          families.csv,       'f,M,N,,model-year,heavy,',         bad-number,       fuel_density_lb_per_gal
          families.csv,       'f,M,N,,model-year,1e3,',           bad-number,       fuel_density_lb_per_gal
          families.csv,       'f,M,N,,model-year,0,',             bad-above-zero,   fuel_density_lb_per_gal
          families.csv,       'f,,N,,model-year,,',               required,         maker
          features.csv,       'f,N,3a,choice,,ramp,bolt-on,',     bad-pattern,      chapter
          features.csv,       'f,N,33,number,furlong,ramp,bolt-on,', bad-word,      unit
          series.csv,         's,turnstone,P,0,,',                out-of-range,     digits
          series.csv,         's,turnstone,P,many,,',             bad-integer,      digits
          series.csv,         's,turnstone,P,4,maybe,',           bad-boolean,      year_suffix
          series.csv,         's,turnstone,ABCDEFGHIJKLMNOPQRSTU,4,,', too-long,    prefix
          change_offerings.csv, 'c,v,option,1.5',                 out-of-range,     take_rate
          production_runs.csv, 'la-2b,1970,,99999999999',         out-of-range,     built
          """)
  void aBadCellIsNamed(String file, String line, String code, String column) throws IOException {
    TableSchema table = Schemas.standard().inFile(file).orElseThrow();
    String text = String.join(",", table.header()) + "\n" + line + "\n";
    assertThat(problems(Packages.clean().with(file, text)))
        .anySatisfy(
            problem -> {
              assertThat(problem.file()).isEqualTo(file);
              assertThat(problem.line()).isEqualTo(2);
              assertThat(problem.column()).isEqualTo(column);
              assertThat(problem.code()).isEqualTo(code);
              assertThat(Texts.what(problem)).isNotBlank();
            });
  }

  @Test
  void aHeaderThatIsWrongIsNamed() throws IOException {
    Packages files =
        Packages.clean()
            .with("sources.csv", "key,kind,titel,kind\nparts-book,parts-catalogue,Parts,book\n");
    assertThat(problems(files))
        .extracting(p -> p.file() + ":" + p.line() + ":" + p.column() + ":" + p.code())
        .contains(
            "sources.csv:1:titel:unknown-column",
            "sources.csv:1:kind:repeated-column",
            "sources.csv:1:title:missing-column");
  }

  @Test
  void linesAreCountedThroughTextsOfSeveralLines() throws IOException {
    String text =
        "key,kind,title\nparts-book,parts-catalogue,\"Parts\n\nbook\"\nother,novel,Other\n";
    assertThat(problems(Packages.clean().with("sources.csv", text)))
        .extracting(PackageProblem::line, PackageProblem::code)
        .containsExactly(tuple(5, "bad-word"));
  }

  @Test
  void aRowOfAnotherWidthIsNamed() throws IOException {
    assertThat(errors(Packages.clean().adding("sources.csv", "a,book,Title,more")))
        .containsExactly(
            "error sources.csv, line 3: The row has 4 cells where the header has 3. Look for a comma"
                + " too many or too few, or one in a text without quotes.");
  }

  @Test
  void aQuoteLeftOpenIsNamedWhereItBegins() throws IOException {
    assertThat(problems(Packages.clean().adding("sources.csv", "a,book,\"Title")))
        .filteredOn(p -> p.code().equals("broken-quotes"))
        .extracting(PackageProblem::line)
        .containsExactly(3);
  }

  @Test
  void keysAreComparedAsNumbersWhereTheyAre() throws IOException {
    Packages files =
        Packages.clean()
            .adding("change_offerings.csv", "door-latch-rotary,120,standard")
            .adding("change_offerings.csv", "door-latch-rotary,120.0,option")
            .adding("sources.csv", "parts-book,book,Again");
    assertThat(problems(files))
        .filteredOn(p -> p.code().equals("duplicate-key"))
        .extracting(p -> p.file() + ":" + p.line() + ":" + p.arguments())
        .containsExactly("change_offerings.csv:5:[4]", "sources.csv:3:[2]");
  }

  @Test
  void aRowWithoutTheEntryItBelongsToIsNamed() throws IOException {
    Packages files =
        Packages.clean()
            .adding("cut_ins.csv", "door-latch-sliding,la-2b,true,,")
            .adding("citations.csv", "c-3,change,no-such-change,parts-book,supports")
            .adding("production_runs.csv", "la-9,1966,1967");
    assertThat(problems(files))
        .extracting(p -> p.file() + ":" + p.line() + ":" + p.column() + ":" + p.value())
        .contains(
            "cut_ins.csv:4:change:door-latch-sliding",
            "citations.csv:4:record:no-such-change",
            "production_runs.csv:3:variant:la-9");
  }

  @Test
  void textThatIsNotUtf8IsNamedWithItsLine() throws IOException {
    byte[] latin = "key,kind,title\na,book,A\nb,book,Fl\u00fcgel\n".getBytes("ISO-8859-1");
    assertThat(problems(Packages.clean().with("sources.csv", latin)))
        .filteredOn(p -> p.code().equals("not-utf-8"))
        .extracting(PackageProblem::line)
        .containsExactly(3);
  }

  @Test
  void controlCharactersAreRefused() throws IOException {
    assertThat(problems(Packages.clean().adding("sources.csv", "a,book,Ti\u0000tle")))
        .extracting(PackageProblem::code)
        .contains("control-character");
  }

  @Test
  void aTableUnderAnUnknownNameIsNotLostSilently() throws IOException {
    assertThat(problems(Packages.clean().with("cut-ins.csv", "change\n")))
        .extracting(PackageProblem::code)
        .containsExactly("unknown-table");
  }

  @Test
  void aPackageNeedsADescriptorOfItsFormat() throws IOException {
    assertThat(problems(Packages.clean().without("datapackage.json")))
        .extracting(PackageProblem::code)
        .containsExactly("no-descriptor");
    assertThat(problems(Packages.clean().with("datapackage.json", "{\"yearline\":{\"format\":2}}")))
        .extracting(PackageProblem::code)
        .containsExactly("unknown-format");
    assertThat(problems(Packages.clean().with("datapackage.json", "{no")))
        .extracting(PackageProblem::code)
        .containsExactly("not-json");
  }

  @Test
  void tooManyRowsAreRefused() throws IOException {
    try (PackageFiles files = PackageFiles.at(Packages.clean().folder(folder.resolve("p")))) {
      assertThat(new PackageReader(files, 5, Budget.MOST).read().problems())
          .extracting(PackageProblem::code)
          .contains("too-many-rows");
    }
  }

  @Test
  void aMissingTableIsEmpty() throws IOException {
    PackageReading reading =
        PackageReader.read(
            Packages.clean()
                .without("citations.csv")
                .without("sources.csv")
                .folder(folder.resolve("p")));
    assertThat(reading.isRefused()).isFalse();
    assertThat(reading.records().sources()).isEmpty();
  }
}
