package club.yearline.compare;

import static club.yearline.testing.Sample.block;
import static club.yearline.testing.Sample.change;
import static club.yearline.testing.Sample.choice;
import static club.yearline.testing.Sample.family;
import static club.yearline.testing.Sample.fromSerial;
import static club.yearline.testing.Sample.fromYear;
import static club.yearline.testing.Sample.number;
import static club.yearline.testing.Sample.series;
import static club.yearline.testing.Sample.source;
import static club.yearline.testing.Sample.variant;
import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Position;
import club.yearline.testing.Sample;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColumnTest {

  private static final List<Entry> BARE =
      List.of(
          source("parts-book"),
          family("turnstone"),
          variant("la-2b", "turnstone", 1964, 1966),
          series("lt", "turnstone", "LT-"),
          block("lt-1965", "lt", "LT-0001", "LT-0100", "la-2b", 1965));

  private static Column column(int year, Entry... more) {
    Catalogue catalogue = Catalogue.of(Sample.records(Sample.with(BARE, more)));
    return Column.of(catalogue, Position.of(catalogue.variant("la-2b").orElseThrow(), year));
  }

  private static Missing missing(Figure figure, Entry... more) {
    return column(1965, more).builds().get(0).recorded(figure).missing();
  }

  @Test
  void cutsAYearWhereverAnyFigureChanges() {
    Column column =
        column(
            1965,
            number("gross-weight", "lb"),
            change("gross-a", "gross-weight", "2300", CutIn.atStart("la-2b")),
            change("gross-b", "gross-weight", "2350", fromSerial("la-2b", "lt", "LT-0051")),
            number("usable-fuel", "gal"),
            change("fuel-a", "usable-fuel", "38", CutIn.atStart("la-2b")),
            change("fuel-b", "usable-fuel", "40", fromSerial("la-2b", "lt", "LT-0021")),
            change("fuel-c", "usable-fuel", "42", fromSerial("la-2b", "lt", "LT-0081")));
    assertThat(column.builds())
        .extracting(
            b ->
                b.serials().first()
                    + ".."
                    + b.serials().last()
                    + " "
                    + b.figure(Figure.GROSS_WEIGHT).orElseThrow().low().number()
                    + " "
                    + b.figure(Figure.USABLE_FUEL).orElseThrow().low().number())
        .containsExactly(
            "LT-0001..LT-0020 2300 38",
            "LT-0021..LT-0050 2300 40",
            "LT-0051..LT-0080 2350 40",
            "LT-0081..LT-0100 2350 42");
  }

  @Test
  void oneBuildIsAllOfAYearThatDoesNotSplit() {
    Column column =
        column(
            1966, number("power", "kW"), change("power-a", "power", "112", CutIn.atStart("la-2b")));
    assertThat(column.builds()).hasSize(1);
    assertThat(column.builds().get(0).serials()).isNull();
    assertThat(column.range(Figure.POWER).orElseThrow().low().in(Scale.KW).number())
        .isEqualTo("112");
  }

  @Test
  void saysWhyAFigureCannotBeUsed() {
    assertThat(missing(Figure.POWER)).isEqualTo(Missing.NO_FEATURE);
    assertThat(missing(Figure.POWER, number("power", "hp"))).isEqualTo(Missing.NOT_OF_VARIANT);
    assertThat(
            missing(
                Figure.POWER,
                number("power", "hp"),
                change("late", "power", "150", fromYear("la-2b", 1966))))
        .isEqualTo(Missing.UNRECORDED);
    assertThat(
            missing(
                Figure.POWER,
                choice("power", "strong"),
                change("strong", "power", "strong", CutIn.atStart("la-2b"))))
        .isEqualTo(Missing.WRONG_UNIT);
  }

  @Test
  void aFigureOfSomeAirframesOnlyIsNoFigureOfAll() {
    CutIn unknownBeginning = new CutIn("la-2b", false, null, 1966, null, null, null);
    assertThat(
            missing(
                Figure.POWER,
                number("power", "hp"),
                change("at-last", "power", "150", unknownBeginning)))
        .isEqualTo(Missing.PARTLY);
  }

  @ParameterizedTest
  @CsvSource({
    "V, 150, WRONG_UNIT",
    "lb, 150, WRONG_UNIT",
    "hp, 0, NOT_POSITIVE",
    "hp, -3, NOT_POSITIVE"
  })
  void neitherOtherUnitsNorNothingAreWorkedWith(String unit, String value, Missing why) {
    assertThat(
            missing(
                Figure.POWER,
                number("power", unit),
                change("power-a", "power", value, CutIn.atStart("la-2b"))))
        .isEqualTo(why);
  }

  @Test
  void takesTheFuelDensityThatTheFamilyRecords() {
    Family plain = family("turnstone");
    Family heavy =
        new Family(
            plain.key(),
            plain.maker(),
            plain.name(),
            null,
            plain.yearMeans(),
            new BigDecimal("6.7"),
            null,
            List.of());
    Feature power = number("power", "hp");
    assertThat(column(1966, power).builds().get(0).fuelDensity().text())
        .isEqualTo("6.0\u00a0lb/gal");
    assertThat(column(1966, power, heavy).builds().get(0).fuelDensity().text())
        .isEqualTo("6.7\u00a0lb/gal");
  }
}
