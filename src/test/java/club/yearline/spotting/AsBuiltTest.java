package club.yearline.spotting;

import static club.yearline.testing.Sample.betweenYears;
import static club.yearline.testing.Sample.change;
import static club.yearline.testing.Sample.choice;
import static club.yearline.testing.Sample.fromSerial;
import static club.yearline.testing.Sample.fromYear;
import static club.yearline.testing.Sample.records;
import static club.yearline.testing.Sample.turnstone;
import static club.yearline.testing.Sample.with;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Variant;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What left the factory, worked by hand. The variant is LA-2B, a hundred built in each year. */
class AsBuiltTest {

  private static final List<Entry> CATALOGUE =
      with(turnstone(), choice("door-latch", "sliding", "rotary", "push", "bow"));

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // offering: s standard, o option (with its take rate)            | sliding, rotary, push
        "sliding s                                                        | 1, 0, 0",
        "sliding s, rotary s                                              | 0.5, 0.5, 0",
        "sliding s, rotary o                                              | 0.75, 0.25, 0",
        "sliding s, rotary o 0.1                                          | 0.9, 0.1, 0",
        "sliding s, rotary o 0                                            | 1, 0, 0",
        "sliding s, rotary o 0.1, push o                                  | 0.65, 0.1, 0.25",
        "sliding s, rotary o 0.75                                         | 0.25, 0.75, 0",
        "sliding s, rotary o 0.9                                          | 0.25, 0.75, 0",
        "sliding s, rotary o 0.6, push o 0.4                              | 0.25, 0.45, 0.3",
        "sliding s, rotary o 0.75, push o                                 | 0.25, 0.5625, 0.1875",
        "sliding s, rotary s, push o 0.2                                  | 0.4, 0.4, 0.2",
        "rotary o, push o                                                 | 0, 0.5, 0.5",
        "sliding o 0.1, rotary o 0.2, push o 0.3                          | 0.333333, 0.333333, 0.333333"
      })
  void sharesAnOfferingBetweenItsValues(String offering, String expected) {
    Change change =
        new Change(
            "door-latch-at-start",
            "door-latch",
            "At the start",
            null,
            Stream.of(offering.strip().split(", *")).map(AsBuiltTest::offered).toList(),
            List.of(CutIn.atStart("la-2b")),
            List.of());
    AsBuilt built =
        builtIn(
            1964,
            with(
                CATALOGUE,
                change,
                change("door-latch-rotary", "door-latch", "bow", fromYear("la-2b", 1968))));
    String[] chances = expected.strip().split(", *");
    assertChance(built, "sliding", Double.parseDouble(chances[0]));
    assertChance(built, "rotary", Double.parseDouble(chances[1]));
    assertChance(built, "push", Double.parseDouble(chances[2]));
    assertThat(built.anything()).isZero();
  }

  private static Offered offered(String text) {
    String[] words = text.split(" ");
    Fit fit = words[1].equals("s") ? Fit.STANDARD : Fit.OPTION;
    return new Offered(words[0], fit, words.length < 3 ? null : new BigDecimal(words[2]));
  }

  @Test
  void takesTheMeanOfATransition() {
    AsBuilt built = builtIn(1965, withRotary(betweenYears("la-2b", 1965, 1966)));
    assertChance(built, "sliding", 0.5);
    assertChance(built, "rotary", 0.5);
  }

  @Test
  void takesTheMeanWhereTheRecordsDoNotTell() {
    // A serial whose year nobody knows, and a change by year: before or after, nobody can say.
    Catalogue catalogue = Catalogue.of(records(withRotary(fromYear("la-2b", 1966))));
    Variant variant = catalogue.variant("la-2b").orElseThrow();
    var lt = catalogue.series("lt").orElseThrow();
    Position position = Position.of(variant, null, lt, lt.read("LT-0300").orElseThrow());
    AsBuilt built = AsBuilt.of(catalogue.expected(position).get(0));
    assertChance(built, "sliding", 0.5);
    assertChance(built, "rotary", 0.5);
  }

  @Test
  void spreadsNothingRecordedEquallyInATransition() {
    List<Entry> entries =
        withRotary(betweenYears("la-2b", 1965, 1966)).stream()
            .filter(e -> !e.key().equals("door-latch-at-start"))
            .toList();
    AsBuilt built = builtIn(1965, entries);
    assertThat(built.anything()).isEqualTo(0.5);
    assertChance(built, "rotary", 0.5);
  }

  @Test
  void isUnknownWhereNothingIsRecorded() {
    List<Entry> entries =
        withRotary(fromYear("la-2b", 1966)).stream()
            .filter(e -> !e.key().equals("door-latch-at-start"))
            .toList();
    assertThat(builtIn(1964, entries)).isEqualTo(AsBuilt.UNKNOWN);
  }

  @Test
  void weighsTheStretchesOfASplitByTheirAirframes() {
    // LT-0201 to LT-0230 sliding, LT-0231 to LT-0300 rotary.
    AsBuilt built = builtIn(1966, withRotary(fromSerial("la-2b", "lt", "LT-0231")));
    assertChance(built, "sliding", 0.3);
    assertChance(built, "rotary", 0.7);
  }

  private static List<Entry> withRotary(CutIn cutIn) {
    return with(CATALOGUE, change("door-latch-rotary", "door-latch", "rotary", cutIn));
  }

  private static AsBuilt builtIn(int year, List<Entry> entries) {
    Catalogue catalogue = Catalogue.of(records(entries));
    Variant variant = catalogue.variant("la-2b").orElseThrow();
    Answer answer = catalogue.expected(Position.of(variant, year)).get(0);
    return AsBuilt.of(answer);
  }

  private static void assertChance(AsBuilt built, String value, double expected) {
    assertThat(built.named().getOrDefault(value, 0.0)).as(value).isEqualTo(expected, within(1e-6));
  }
}
