package club.yearline.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Located;
import club.yearline.effectivity.Question;
import club.yearline.exchange.Asking;
import club.yearline.spotting.Seen;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Inspections over the demo find what was stated before any was made. */
class DemoInspectionsTest {

  private static final Catalogue DEMO = Asking.catalogue(Path.of("seed-data/demo"));

  static List<CSVRecord> stated() {
    return Asking.rows(Path.of("src/test/resources/demo/stated-inspections.csv"));
  }

  @ParameterizedTest
  @MethodSource("stated")
  void aStatedInspectionFindsWhatIsStated(CSVRecord row) {
    Inspection made = inspect(row);
    assertThat(words(made)).as(row.toString()).isEqualTo(row.get("findings"));
    assertThat(missing(made)).as(row.toString()).isEqualTo(row.get("missing"));
    assertThat(made.verdict().code()).as(row.toString()).isEqualTo(row.get("verdict"));
    assertThat(made.questions())
        .as(row.toString())
        .extracting(f -> f.match().code())
        .allMatch(code -> code.equals("differs") || code.equals("retrofit"));
  }

  @Test
  void everyFindingAndVerdictIsStatedSomewhere() {
    assertThat(stated().stream().flatMap(row -> split(row.get("findings")).stream()))
        .contains(Arrays.stream(Match.values()).map(Match::code).toArray(String[]::new));
    assertThat(stated().stream().map(row -> row.get("verdict")))
        .contains(Arrays.stream(Verdict.values()).map(Verdict::code).toArray(String[]::new));
  }

  private static Inspection inspect(CSVRecord row) {
    String year = row.get("year");
    Question question =
        new Question(
            orNothing(row.get("variant")),
            year.isEmpty() ? null : Integer.valueOf(year),
            orNothing(row.get("serial")));
    Located located = DEMO.locate(question);
    assertThat(located).as(row.toString()).isInstanceOf(Located.Found.class);
    List<Seen> seen = split(row.get("seen")).stream().map(DemoInspectionsTest::seen).toList();
    return Inspector.inspect(DEMO, ((Located.Found) located).position(), seen);
  }

  private static Seen seen(String code) {
    String[] parts = code.split(":");
    return new Seen(DEMO.feature(parts[0]).orElseThrow(), parts[1]);
  }

  private static String words(Inspection made) {
    return made.findings().stream().map(f -> f.match().code()).collect(Collectors.joining(" "));
  }

  private static String missing(Inspection made) {
    return made.findings().stream()
        .flatMap(f -> f.missing().stream())
        .map(r -> r.document())
        .collect(Collectors.joining(", "));
  }

  private static List<String> split(String words) {
    return words.isEmpty() ? List.of() : List.of(words.split(" "));
  }

  private static @Nullable String orNothing(String text) {
    return text.isEmpty() ? null : text;
  }
}
