package club.yearline.spotting;

import static club.yearline.testing.Sample.change;
import static club.yearline.testing.Sample.fromSerial;
import static club.yearline.testing.Sample.records;
import static club.yearline.testing.Sample.turnstone;
import static club.yearline.testing.Sample.variant;
import static club.yearline.testing.Sample.with;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.ProductionRun;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.Variant;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * Claims against the family, worked by hand: a hundred LA-2B in each year from 1964 to 1968, the
 * latch rotary from LT-0231 on, in the middle of 1966.
 */
class WeighedTest {

  private static final Offset<Double> CLOSE = within(1e-9);

  private static final List<Entry> ENTRIES =
      with(
          turnstone(),
          change(
              "door-latch-rotary", "door-latch", "rotary", fromSerial("la-2b", "lt", "LT-0231")));

  private static final Catalogue CATALOGUE = Catalogue.of(records(ENTRIES));

  /** 1964 and 1965 0.025 each, 1966 0.95 x 0.7 + 0.025 = 0.69, 1967 and 1968 0.975 each. */
  private static final double ALL = 2 * 0.025 + 0.69 + 2 * 0.975;

  @Test
  void weighsAYearAgainstTheOthers() {
    Weighed weighed = weigh(CATALOGUE, Claim.of(Position.of(laTwoB(CATALOGUE), 1966)));
    assertThat(weighed.share()).isEqualTo(0.69 / ALL, CLOSE);
    assertThat(weighed.bestOther().orElseThrow().pair().year()).isEqualTo(1967);
    assertThat(weighed.bestOther().orElseThrow().share()).isEqualTo(0.975 / ALL, CLOSE);
    assertThat(weighed.shares()).hasSize(5);
  }

  @Test
  void takesTheClaimsChancesAtItsSerial() {
    Weighed early = weigh(CATALOGUE, Claim.of(serial(1966, "LT-0210")));
    assertThat(early.share()).isEqualTo(0.025 / (ALL - 0.69 + 0.025), CLOSE);
    Weighed late = weigh(CATALOGUE, Claim.of(serial(1966, "LT-0290")));
    assertThat(late.share()).isEqualTo(0.975 / (ALL - 0.69 + 0.975), CLOSE);
  }

  @Test
  void takesAllYearsTogetherWhereNoneIsClaimed() {
    Weighed weighed = weigh(CATALOGUE, Claim.of(laTwoB(CATALOGUE)));
    assertThat(weighed.share()).isEqualTo(1, CLOSE);
    assertThat(weighed.bestOther()).isEmpty();
  }

  @Test
  void takesAllYearsAtTheSerialWhereOnlyTheSerialIsKnown() {
    // LA-2C lacks the latch: 0.5 in its one year, which weighs the mean, 100.
    Catalogue catalogue =
        Catalogue.of(records(with(ENTRIES, variant("la-2c", "turnstone", 1969, 1969))));
    Series lt = catalogue.series("lt").orElseThrow();
    Position position = Position.of(laTwoB(catalogue), null, lt, lt.read("LT-0210").orElseThrow());
    Weighed weighed = weigh(catalogue, Claim.of(position));
    assertThat(weighed.share()).isEqualTo(5 * 0.025 / (5 * 0.025 + 0.5), CLOSE);
    assertThat(weighed.bestOther().orElseThrow().pair().variant().key()).isEqualTo("la-2c");
  }

  @Test
  void addsAClaimedYearBeyondTheLastRecordedOne() {
    Variant endless =
        new Variant(
            "la-2b",
            "turnstone",
            "LA-2B",
            null,
            null,
            List.of(),
            List.of(new ProductionRun(1964, null, null)),
            List.of(),
            List.of());
    Catalogue catalogue = Catalogue.of(records(with(ENTRIES, endless)));
    Weighed weighed = weigh(catalogue, Claim.of(Position.of(laTwoB(catalogue), 1975)));
    // Nothing tells its serials, so it stands on both sides of a change by serial's year: after.
    assertThat(weighed.shares()).hasSize(6);
    assertThat(weighed.share()).isEqualTo(0.975 / (ALL + 0.975), CLOSE);
  }

  @Test
  void refusesAVariantOfAnotherFamily() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> weigh(CATALOGUE, Claim.of(variant("la-7", "dotterel", 1970, 1971))));
  }

  private static Weighed weigh(Catalogue catalogue, Claim claim) {
    Seen rotary = new Seen(catalogue.feature("door-latch").orElseThrow(), "rotary");
    return Spotting.of(catalogue, "turnstone").orElseThrow().weigh(claim, List.of(rotary));
  }

  private static Position serial(int year, String serial) {
    Series lt = CATALOGUE.series("lt").orElseThrow();
    return Position.of(laTwoB(CATALOGUE), year, lt, lt.read(serial).orElseThrow());
  }

  private static Variant laTwoB(Catalogue catalogue) {
    return catalogue.variant("la-2b").orElseThrow();
  }
}
