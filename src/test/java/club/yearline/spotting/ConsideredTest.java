package club.yearline.spotting;

import static club.yearline.testing.Sample.block;
import static club.yearline.testing.Sample.change;
import static club.yearline.testing.Sample.choice;
import static club.yearline.testing.Sample.family;
import static club.yearline.testing.Sample.fromSerial;
import static club.yearline.testing.Sample.number;
import static club.yearline.testing.Sample.records;
import static club.yearline.testing.Sample.turnstone;
import static club.yearline.testing.Sample.variant;
import static club.yearline.testing.Sample.with;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Exchange;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Retrofit;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.Series;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Prior and chances, worked by hand. */
class ConsideredTest {

  @Test
  void reckonsWithTheAirframesOfBlocks() {
    Considered considered =
        turnstones(with(turnstone(), block("lt-1964", "lt", "LT-0061", "LT-0100", "la-2b", 1964)));
    assertThat(considered.pairs())
        .extracting(Pair::year)
        .containsExactly(1964, 1965, 1966, 1967, 1968);
    assertThat(considered.weights()).containsExactly(40, 100, 100, 100, 100);
  }

  @Test
  void sharesABlockWithoutAYearBetweenTheYears() {
    Considered considered =
        turnstones(
            with(
                turnstone(),
                new SerialBlock(
                    "lt-1964", "lt", "LT-0051", "LT-0100", "la-2b", null, false, List.of())));
    assertThat(considered.weights()).containsExactly(10, 110, 110, 110, 110);
  }

  @Test
  void takesTheMeanOfTheFamilyForAPairWithoutBlocks() {
    List<Entry> entries = new ArrayList<>(turnstone());
    entries.removeIf(e -> e.key().equals("lt-1964") || e.key().equals("lt-1965"));
    entries = with(entries, block("lt-1966", "lt", "LT-0271", "LT-0300", "la-2b", 1966));
    // 30, 100 and 100 are known.
    assertThat(turnstones(entries).weights())
        .containsExactly(new double[] {230 / 3.0, 230 / 3.0, 30, 100, 100}, within(1e-9));
  }

  @Test
  void takesTheMeanOfTheCatalogueForAFamilyWithoutBlocks() {
    Considered all = Spotting.ofAll(catalogue(withDotterel()));
    assertThat(all.weights()).containsExactly(100, 100, 100, 100, 100, 100, 100);
  }

  @Test
  void takesOneWhereNoBlocksAreKnown() {
    List<Entry> entries = new ArrayList<>(withDotterel());
    entries.removeIf(e -> e instanceof SerialBlock);
    assertThat(Spotting.ofAll(catalogue(entries)).weights()).containsOnly(1);
  }

  private static List<Entry> withDotterel() {
    return with(turnstone(), family("dotterel"), variant("la-7", "dotterel", 1970, 1971));
  }

  @ParameterizedTest
  @CsvSource({
    // exchange, chance of the value as built, of another
    "BUILT_IN, 0.9995, 0.0005",
    "MAJOR_WORK, 0.995, 0.005",
    "BOLT_ON, 0.975, 0.025",
    "OFTEN_CHANGED, 0.9, 0.1"
  })
  void allowsForExchangedParts(Exchange exchange, double asBuilt, double other) {
    Considered considered = turnstones(with(turnstone(), latch(exchange)));
    assertThat(chance(considered, 1964, "sliding")).isEqualTo(asBuilt, within(1e-12));
    assertThat(chance(considered, 1964, "rotary")).isEqualTo(other, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({
    // exchange, retrofit's first and last year, chance of the value in 1965
    "BOLT_ON, , , 0.05",
    "BOLT_ON, 1965, 1965, 0.05",
    "BOLT_ON, 1966, , 0.025",
    "BOLT_ON, , 1964, 0.025",
    "BUILT_IN, , , 0.05",
    "OFTEN_CHANGED, , , 0.1"
  })
  void allowsMoreWhereARetrofitIsRecorded(
      Exchange exchange, @Nullable Integer first, @Nullable Integer last, double expected) {
    Considered considered =
        turnstones(with(turnstone(), latch(exchange), retrofit("rotary", first, last)));
    assertThat(chance(considered, 1965, "rotary")).isEqualTo(expected, within(1e-12));
    double x = exchange.chance();
    assertThat(chance(considered, 1965, "sliding")).isEqualTo(1 - x + x / 2, within(1e-12));
  }

  @Test
  void takesTheChanceAtASerialWhereItIsKnown() {
    Catalogue catalogue =
        catalogue(
            with(
                turnstone(),
                change(
                    "door-latch-rotary",
                    "door-latch",
                    "rotary",
                    fromSerial("la-2b", "lt", "LT-0231"))));
    Considered considered = Spotting.of(catalogue, "turnstone").orElseThrow();
    Seen rotary = seen(catalogue, "door-latch", "rotary");
    assertThat(considered.chance(at(catalogue, "LT-0230"), rotary)).isEqualTo(0.025, within(1e-12));
    assertThat(considered.chance(at(catalogue, "LT-0231"), rotary)).isEqualTo(0.975, within(1e-12));
    assertThat(
            considered.chance(Position.of(catalogue.variant("la-2b").orElseThrow(), 1966), rotary))
        .isEqualTo(0.95 * 0.7 + 0.025, within(1e-12));
    assertThat(considered.logLikelihood(at(catalogue, "LT-0231"), List.of(rotary)))
        .isEqualTo(Math.log(0.975), within(1e-12));
    assertThat(considered.logLikelihood(at(catalogue, "LT-0231"), List.of())).isZero();
  }

  @Test
  void isUniformWhereTheFeatureDoesNotBelongToTheVariant() {
    Catalogue catalogue = catalogue(with(turnstone(), variant("la-2c", "turnstone", 1969, 1969)));
    Considered considered = Spotting.of(catalogue, "turnstone").orElseThrow();
    Position other = Position.of(catalogue.variant("la-2c").orElseThrow(), 1969);
    assertThat(considered.chance(other, seen(catalogue, "door-latch", "rotary"))).isEqualTo(0.5);
  }

  @Test
  void takesTheDistinctNumbersOfTheVariantsConsideredAsAFiguresValues() {
    Catalogue catalogue =
        catalogue(
            with(
                withDotterel(),
                number("power", "hp"),
                change("p-1", "power", "145", CutIn.atStart("la-2b")),
                change("p-2", "power", "160.0", fromSerial("la-2b", "lt", "LT-0101")),
                change("p-3", "power", "160", fromSerial("la-2b", "lt", "LT-0301")),
                change("p-4", "power", "210", CutIn.atStart("la-7"))));
    Feature power = catalogue.feature("power").orElseThrow();
    Considered family = Spotting.of(catalogue, "turnstone").orElseThrow();
    Considered all = Spotting.ofAll(catalogue);
    assertThat(family.values(power)).containsExactly("145", "160");
    assertThat(all.values(power)).containsExactly("145", "160", "210");
    Position first = Position.of(catalogue.variant("la-2b").orElseThrow(), 1964);
    // Built in, so x is 0.001.
    assertThat(family.chance(first, new Seen(power, "145.00"))).isEqualTo(0.9995, within(1e-12));
    assertThat(family.chance(first, new Seen(power, "210"))).isEqualTo(0.0005, within(1e-12));
    assertThat(all.chance(first, new Seen(power, "210"))).isEqualTo(0.001 / 3, within(1e-12));
    assertThat(all.chance(first, new Seen(power, "99"))).isEqualTo(0.001 / 3, within(1e-12));
  }

  @Test
  void knowsARetrofitsNumberAsAValue() {
    Catalogue catalogue =
        catalogue(
            with(
                turnstone(),
                number("power", "hp"),
                change("p-1", "power", "145", CutIn.atStart("la-2b")),
                new Retrofit(
                    "kit", "power", "180", "la-2b", null, null, null, null, null, "Kit", null,
                    List.of())));
    Considered considered = Spotting.of(catalogue, "turnstone").orElseThrow();
    Feature power = catalogue.feature("power").orElseThrow();
    Position first = Position.of(catalogue.variant("la-2b").orElseThrow(), 1964);
    assertThat(considered.values(power)).containsExactly("145", "180");
    assertThat(considered.chance(first, new Seen(power, "180"))).isEqualTo(0.05, within(1e-12));
  }

  @Test
  void refusesAValueThatTheFeatureCannotHave() {
    Feature latch = choice("door-latch", "sliding", "rotary");
    assertThatIllegalArgumentException().isThrownBy(() -> new Seen(latch, "velcro"));
    assertThatIllegalArgumentException().isThrownBy(() -> new Seen(number("power", "hp"), "many"));
    assertThat(Seen.read(latch, "velcro")).isEmpty();
    assertThat(Seen.read(number("power", "hp"), " 145.0 ")).map(Seen::code).contains("power:145");
  }

  @Test
  void knowsNoFamilyOfAnotherName() {
    assertThat(Spotting.of(catalogue(turnstone()), "albatross")).isEmpty();
  }

  private static Feature latch(Exchange exchange) {
    Feature plain = choice("door-latch", "sliding", "rotary");
    return new Feature(
        plain.key(),
        plain.name(),
        plain.chapter(),
        plain.kindOfValue(),
        null,
        plain.visibility(),
        exchange,
        null,
        plain.values(),
        List.of());
  }

  private static Retrofit retrofit(String value, @Nullable Integer first, @Nullable Integer last) {
    return new Retrofit(
        "kit",
        "door-latch",
        value,
        "la-2b",
        first,
        last,
        null,
        null,
        null,
        "Kit 52",
        null,
        List.of());
  }

  private static double chance(Considered considered, int year, String value) {
    return considered.chance(
        Position.of(considered.pairs().get(0).variant(), year),
        new Seen(considered.features().get(0), value));
  }

  private static Position at(Catalogue catalogue, String serial) {
    Series lt = catalogue.series("lt").orElseThrow();
    return Position.of(
        catalogue.variant("la-2b").orElseThrow(), 1966, lt, lt.read(serial).orElseThrow());
  }

  private static Seen seen(Catalogue catalogue, String feature, String value) {
    return new Seen(catalogue.feature(feature).orElseThrow(), value);
  }

  private static Considered turnstones(List<Entry> entries) {
    return Spotting.of(catalogue(entries), "turnstone").orElseThrow();
  }

  private static Catalogue catalogue(List<Entry> entries) {
    return Catalogue.of(records(entries));
  }
}
