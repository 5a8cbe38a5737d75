package club.yearline.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Findings;
import club.yearline.testing.SmallCatalogue;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FinderTest {

  private static final Catalogue CATALOGUE = Catalogue.of(SmallCatalogue.records());

  private final Finder finder = Finder.of(CATALOGUE);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          LT-0012              | serial LT-0012 la-2
          lt 12                | serial LT-0012 la-2
          LT\u20130012         | serial LT-0012 la-2
          LT-0012 1957         | serial LT-0012 la-2
          35                   | serial 35 la-5
          LT-0035              | serial LT-0035 -
          LA-2A 1960           | year la-2a 1960
          1960 la 2a           | year la-2a 1960
          la2a-1960            | year la-2a 1960
          la2a 60              | year la-2a 1960
          turnstone de luxe 1960 | year la-2a 1960
          Turnstone 1958       | year la-2a 1958
          whimbrel 1961        | year la-5 1961
          1960                 | year la-2a 1960
          LA-2                 | variant la-2
          la2a                 | variant la-2a
          turnstone deluxe     | variant la-2a
          LA-5 Whimbrel        | variant la-5; family whimbrel
          Lindmark             | maker Lindmark Aero
          landing light        | feature landing-light
          Landing-Light        | feature landing-light
          doorlatch            | feature door-latch
          rotary               | value door-latch rotary
          nose bowl            | value landing-light nose
          SK-52-01             | retrofit kit
          la-mm-2              | source manual
          halvik               | source book
          landing light 1960   | feature landing-light
          """)
  void readsTextsAsPeopleTypeThem(String typed, String meant) {
    assertThat(said(finder.find(typed))).startsWith(meant.split("; "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          LT-0012            | serial LT-0012 la-2
          LA-2               | variant la-2
          LA-2A 1960         | year la-2a 1960
          Turnstone 1958     | year la-2a 1958
          door latch         | feature door-latch
          rota               | value door-latch rotary
          """)
  void goesStraightWhereThereIsOneMeaning(String typed, String meant) {
    assertThat(finder.find(typed).only().map(FinderTest::say)).contains(meant);
  }

  @ParameterizedTest
  @ValueSource(strings = {"turnstone", "turnstoen", "LA-2B", "LA-2A 1959", "1957", "", "xyzzy"})
  void doesNotGoStraightWhereItWouldBeAGuess(String typed) {
    assertThat(finder.find(typed).only()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "turnstoen, family turnstone",
    "lnading light, feature landing-light",
    "wimbrel, variant la-5"
  })
  void forgivesASlipOfThePen(String typed, String meant) {
    Found found = finder.find(typed);
    assertThat(said(found)).contains(meant);
    assertThat(found.hits()).allMatch(h -> h.closeness() == Closeness.NEAR);
  }

  @Test
  void saysWhichYearItReadWhereTheVariantWasNotProducedThen() {
    Found found = finder.find("LA-2A 1959");
    assertThat(found.year()).isEqualTo(1959);
    assertThat(said(found)).containsExactly("variant la-2a");
  }

  @Test
  void doesNotGuessACenturyOutsideTheRuns() {
    assertThat(said(finder.find("la-2a 59"))).doesNotContain("year la-2a 1959");
  }

  @Test
  void saysWhichWordsItLeftAside() {
    Found found = finder.find("door qqqqqqq");
    assertThat(found.unread()).containsExactly("qqqqqqq");
    assertThat(said(found)).contains("feature door-latch");
    assertThat(found.only()).isEmpty();
  }

  @Test
  void offersATextThatIsASerialAndAYearAsBoth() {
    assertThat(said(finder.find("1957"))).contains("year la-2 1957", "serial 1957 -");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "   ",
        "---",
        "%%%",
        "\u0000",
        "' OR 1=1",
        "<script>",
        "9999999999999999999999"
      })
  void findsNothingInNonsense(String typed) {
    assertThat(finder.find(typed).isEmpty()).isTrue();
  }

  @Test
  void refusesATextNobodyWouldType() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> finder.find("x".repeat(Finder.MAX_LENGTH + 1)))
        .withMessageContaining("100");
  }

  @Test
  void readsAnEmptyCatalogue() {
    assertThat(Finder.of(Catalogue.EMPTY).find("LA-2 1956").isEmpty()).isTrue();
  }

  @Test
  void standsOnRecordsWithoutErrors() {
    assertThat(Findings.in(SmallCatalogue.records())).noneMatch(f -> f.isError());
  }

  private static List<String> said(Found found) {
    return found.hits().stream().map(h -> say(h.meaning())).toList();
  }

  private static String say(Meaning meaning) {
    if (meaning instanceof Meaning.OfSerial m) {
      return "serial " + m.match().text() + " " + (m.block() == null ? "-" : m.block().variant());
    } else if (meaning instanceof Meaning.OfYear m) {
      return "year " + m.variant().key() + " " + m.year();
    } else if (meaning instanceof Meaning.OfVariant m) {
      return "variant " + m.variant().key();
    } else if (meaning instanceof Meaning.OfFamily m) {
      return "family " + m.family().key();
    } else if (meaning instanceof Meaning.OfMaker m) {
      return "maker " + m.maker();
    } else if (meaning instanceof Meaning.OfFeature m) {
      return "feature " + m.feature().key();
    } else if (meaning instanceof Meaning.OfValue m) {
      return "value " + m.feature().key() + " " + m.value().key();
    } else if (meaning instanceof Meaning.OfRetrofit m) {
      return "retrofit " + m.retrofit().key();
    } else if (meaning instanceof Meaning.OfSource m) {
      return "source " + m.source().key();
    }
    throw new AssertionError(meaning);
  }
}
