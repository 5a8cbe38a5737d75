package club.yearline.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Finding;
import club.yearline.effectivity.Findings;
import club.yearline.effectivity.Located;
import club.yearline.effectivity.Records;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The demo catalogue answers as its authors stated, and is as consistent as they meant it. */
class DemoTruthsTest {

  private static final Records RECORDS = Asking.records(Path.of("seed-data/demo"));
  private static final Catalogue DEMO = Catalogue.of(RECORDS);

  static List<CSVRecord> truths() {
    return Asking.rows(Path.of("src/test/resources/demo/stated-truths.csv"));
  }

  @ParameterizedTest
  @MethodSource("truths")
  void statedTruthHolds(CSVRecord row) {
    Located located = Asking.ask(DEMO, row.get("variant"), row.get("year"), row.get("serial"));
    assertThat(located).as(row.toString()).isInstanceOf(Located.Found.class);
    Answer answer = Asking.answer(DEMO, ((Located.Found) located).position(), row.get("feature"));
    assertThat(answer.state().code()).as(row.toString()).isEqualTo(row.get("state"));
    assertThat(Asking.text(answer, true)).as(row.toString()).isEqualTo(row.get("values"));
  }

  @Test
  void onlyTheTwoWarningsLeftInOnPurposeAreFound() {
    assertThat(Findings.in(RECORDS))
        .filteredOn(f -> f.code().level() != Finding.Level.NOTE)
        .extracting(f -> f.code() + " " + f.record() + " " + f.arguments())
        .containsExactlyInAnyOrder("NO_BASELINE beacon [la-7]", "NO_BASELINE charging [la-7a]");
  }

  @Test
  void theDemoIsAsRichAsItsScenarioAsks() {
    assertThat(RECORDS.families()).hasSize(3);
    assertThat(RECORDS.variants()).hasSize(11);
    assertThat(RECORDS.features()).hasSizeGreaterThanOrEqualTo(60);
    assertThat(RECORDS.features().stream().map(f -> f.chapter()).distinct())
        .hasSizeGreaterThanOrEqualTo(15);
    assertThat(RECORDS.changes()).hasSizeGreaterThanOrEqualTo(180);
    assertThat(RECORDS.sources()).hasSizeGreaterThanOrEqualTo(40);
  }
}
