package club.yearline.inspection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Located;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Question;
import club.yearline.spotting.Seen;
import club.yearline.testing.SmallCatalogue;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Inspections worked out by hand on the small catalogue. */
class InspectionTest {

  private static final Catalogue SMALL = Catalogue.of(SmallCatalogue.records());

  /** The latch splits 1957 at LT-0015, a kit brings the rotary one; the light changes in 1960. */
  @ParameterizedTest
  @CsvSource({
    "la-2, 1956, , door-latch:pull, AS_BUILT",
    "la-2, 1956, , door-latch:rotary, RETROFIT",
    "la-2, 1957, , door-latch:pull, EITHER",
    "la-2, 1957, , door-latch:rotary, EITHER",
    ", , LT-0014, door-latch:pull, AS_BUILT",
    ", , LT-0014, door-latch:rotary, RETROFIT",
    ", , LT-0015, door-latch:rotary, AS_BUILT",
    ", , LT-0015, door-latch:pull, DIFFERS",
    "la-2a, 1958, , door-latch:pull, DIFFERS",
    "la-2a, 1958, , landing-light:wing, AS_BUILT",
    "la-2a, 1960, , landing-light:wing, EITHER",
    "la-2a, 1960, , landing-light:nose, EITHER",
    "la-2a, 1958, , landing-light:nose, DIFFERS",
    "la-2, 1956, , landing-light:wing, NOT_RECORDED",
    "la-2a, 1958, , power:145, NOT_RECORDED",
    "la-2, 1956, , power:145.0, AS_BUILT",
    "la-2, 1956, , power:160, DIFFERS",
    "la-2, 1957, , power:160.00, AS_BUILT",
    "la-5, 1961, , power:108.5, AS_BUILT",
    "la-5, , 35, power:108.5, AS_BUILT",
  })
  void aFindingIsAsTheTableSays(
      String variant, Integer year, String serial, String seen, Match match) {
    assertThat(inspect(claim(variant, year, serial), seen).findings())
        .extracting(Finding::match)
        .containsExactly(match);
  }

  @Test
  void aValueThatDiffersIsToldWhereItBelongs() {
    Finding finding = inspect(claim("la-2a", 1958, null), "door-latch:pull").findings().get(0);
    assertThat(finding.asBuiltAt())
        .extracting(InspectionTest::text)
        .containsExactly("la-2 1956-1956");
    assertThat(finding.possibleAt())
        .extracting(InspectionTest::text)
        .containsExactly("la-2 1957-1957");
  }

  @Test
  void aRetrofitNamesItsRecords() {
    Finding finding = inspect(claim("la-2", 1956, null), "door-latch:rotary").findings().get(0);
    assertThat(finding.retrofits()).extracting(r -> r.document()).containsExactly("Kit SK-52-01");
    assertThat(finding.missing()).isEmpty();
  }

  @Test
  void withoutAnObservationThereIsTooLittle() {
    assertThat(inspect(claim("la-2", 1956, null)).verdict()).isEqualTo(Verdict.TOO_LITTLE);
    assertThat(inspect(claim("la-2", 1956, null), "landing-light:wing").verdict())
        .isEqualTo(Verdict.TOO_LITTLE);
  }

  @Test
  void whereNothingDiffersTheClaimIsConsistent() {
    assertThat(inspect(claim("la-2", 1956, null), "door-latch:rotary", "power:145").verdict())
        .isEqualTo(Verdict.CONSISTENT);
  }

  /**
   * A pull handle weighs 10 × 0.975 for 1956, 10 × (0.95 × 4/10 + 0.025) for 1957, of whose ten
   * serials four have it, and 0.025 for each of the ten of 1958 and the twenty of 1960. So 1956 is
   * 39 times as likely as 1958, and 19.5 times as likely as 1960: beyond twenty, and not.
   */
  @Test
  void anotherYearMoreThanTwentyTimesAsLikelyCastsDoubtOnTheClaim() {
    Inspection early = inspect(claim("la-2a", 1958, null), "door-latch:pull");
    assertThat(early.verdict()).isEqualTo(Verdict.CHECK_IDENTITY);
    assertThat(early.weighed().share()).isCloseTo(0.25 / 14.55, within(1e-12));
    assertThat(early.weighed().bestOther().orElseThrow().share())
        .isCloseTo(9.75 / 14.55, within(1e-12));
    Inspection late = inspect(claim("la-2a", 1960, null), "door-latch:pull");
    assertThat(late.verdict()).isEqualTo(Verdict.EXCHANGED_PARTS);
    assertThat(late.weighed().share()).isCloseTo(0.5 / 14.55, within(1e-12));
  }

  /** At LT-0015 the pull handle has the chance 0.025 only, not the mean of its year. */
  @Test
  void aClaimedSerialIsJudgedAtTheSerial() {
    Inspection made = inspect(claim(null, null, "LT-0015"), "door-latch:pull");
    assertThat(made.weighed().share()).isCloseTo(0.25 / 10.75, within(1e-12));
    assertThat(made.verdict()).isEqualTo(Verdict.CHECK_IDENTITY);
  }

  private static String text(Belongs belongs) {
    return belongs.variant().key() + " " + belongs.firstYear() + "-" + belongs.lastYear();
  }

  private static Inspection inspect(Position claim, String... seen) {
    return Inspector.inspect(SMALL, claim, Stream.of(seen).map(InspectionTest::seen).toList());
  }

  private static Seen seen(String code) {
    String[] parts = code.split(":");
    return new Seen(SMALL.feature(parts[0]).orElseThrow(), parts[1]);
  }

  private static Position claim(String variant, Integer year, String serial) {
    return ((Located.Found) SMALL.locate(new Question(variant, year, serial))).position();
  }
}
