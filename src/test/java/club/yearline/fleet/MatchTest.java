package club.yearline.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Located;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Question;
import club.yearline.effectivity.Retrofit;
import club.yearline.testing.Sample;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What was seen against what should be, as the engine answers. */
class MatchTest {

  private static final Retrofit KIT =
      new Retrofit(
          "kit",
          "door-latch",
          "rotary",
          "la-2b",
          1964,
          1964,
          null,
          null,
          null,
          "SK-1",
          null,
          List.of());

  private static Match match(List<Entry> entries, Question question, String feature, String seen) {
    Catalogue catalogue = Catalogue.of(Sample.records(entries));
    Position position = ((Located.Found) catalogue.locate(question)).position();
    Answer answer =
        catalogue.expected(position).stream()
            .filter(a -> a.feature().key().equals(feature))
            .findFirst()
            .orElse(null);
    return Match.of(answer, position, seen);
  }

  @ParameterizedTest
  @CsvSource({
    "LT-0042, sliding, AS_BUILT",
    "LT-0042, rotary, RETROFIT",
    "LT-0142, rotary, DIFFERS",
    "LT-0442, rotary, AS_BUILT",
    "LT-0442, sliding, DIFFERS",
  })
  void aSettledAnswerIsMetOrNot(String serial, String seen, Match expected) {
    List<Entry> entries = Sample.with(Sample.turnstone(), KIT);
    assertThat(match(entries, new Question(null, null, serial), "door-latch", seen))
        .isEqualTo(expected);
  }

  @Test
  void insideATransitionBothArePossible() {
    List<Entry> entries =
        Sample.with(
            Sample.turnstone(),
            Sample.change(
                "door-latch-rotary",
                "door-latch",
                "rotary",
                Sample.betweenYears("la-2b", 1966, 1967)));
    Question question = new Question(null, null, "LT-0242");
    assertThat(match(entries, question, "door-latch", "sliding")).isEqualTo(Match.POSSIBLE);
    assertThat(match(entries, question, "door-latch", "rotary")).isEqualTo(Match.POSSIBLE);
  }

  @Test
  void aYearThatSplitsKnowsEachOfItsStretches() {
    List<Entry> entries =
        Sample.with(
            Sample.turnstone(),
            Sample.change(
                "door-latch-rotary",
                "door-latch",
                "rotary",
                Sample.fromSerial("la-2b", "lt", "LT-0250")));
    Question question = new Question("la-2b", 1966, null);
    assertThat(match(entries, question, "door-latch", "sliding")).isEqualTo(Match.POSSIBLE);
  }

  @Test
  void whatTheCatalogueDoesNotSayIsNoDifference() {
    List<Entry> entries =
        Sample.with(
            Sample.turnstone(),
            Sample.choice("fin", "rounded", "swept"),
            Sample.change("fin-swept", "fin", "swept", Sample.betweenYears("la-2b", 1966, 1967)));
    assertThat(match(entries, new Question(null, null, "LT-0042"), "fin", "rounded"))
        .isEqualTo(Match.UNRECORDED);
    assertThat(match(entries, new Question(null, null, "LT-0242"), "fin", "rounded"))
        .isEqualTo(Match.UNRECORDED);
    assertThat(match(entries, new Question(null, null, "LT-0442"), "fin", "rounded"))
        .isEqualTo(Match.DIFFERS);
    assertThat(match(entries, new Question(null, null, "LT-0442"), "no-such", "x"))
        .isEqualTo(Match.UNRECORDED);
  }

  @Test
  void numbersAreEqualByValue() {
    List<Entry> entries =
        Sample.with(
            Sample.turnstone(),
            Sample.number("gross-weight", "lb"),
            Sample.change("gw", "gross-weight", "2300", CutIn.atStart("la-2b")));
    Question question = new Question(null, null, "LT-0042");
    assertThat(match(entries, question, "gross-weight", "2300.0")).isEqualTo(Match.AS_BUILT);
    assertThat(match(entries, question, "gross-weight", "2400")).isEqualTo(Match.DIFFERS);
  }
}
