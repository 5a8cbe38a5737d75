package club.yearline.estimation;

import static club.yearline.estimation.Samples.estimate;
import static club.yearline.estimation.Samples.old;
import static club.yearline.estimation.Samples.young;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import club.yearline.effectivity.Serial;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Estimates worked out by hand; 0.05 is exchanged unless it is said, so that x/2 is 1/40. */
class EstimateTest {

  @Test
  void aCutInLiesBetweenTheLastOldOneAndTheFirstNewOne() {
    Estimate estimate = estimate(1, 100, old(40), young(61));
    assertThat(estimate.densest()).containsExactly(new Bounds(41, 61));
  }

  /**
   * Candidates 1 to 4, an old one at 2. Clean: 1 and 2 make it new (1/40 each), 3 and 4 old (39/40
   * each), together 80/40, so the mean is 1/2. Windows: (1,2) new 1/40; (1,3), (1,4), (2,3), (2,4)
   * inside 1/2; (3,4) old 39/40; together 3, so the mean is 1/2.
   */
  @Test
  void oneAirframeInTheMiddleTellsNothingOfTheModels() {
    Estimate estimate = estimate(1, 4, old(2));
    assertThat(estimate.logBayesFactor()).hasValueCloseTo(0.0, within(1e-15));
    assertThat(estimate.cleanChance()).isCloseTo(0.5, within(1e-15));
    assertThat(estimate.densest()).containsExactly(new Bounds(3, 4));
    // 78/80 of the sum lie in 3 and 4.
    assertThat(estimate.credible()).containsExactly(new Bounds(3, 4));
    assertThat(estimate.window()).hasValue(new WindowStretches(new Bounds(3, 3), new Bounds(4, 4)));
  }

  /**
   * Candidates 1 and 2, one new at 1 and one old at 1, often exchanged (x/2 = 1/10). Clean: 9/100
   * for both. The one window holds both inside: 1/4.
   */
  @Test
  void oldAndNewOnOneSerialSpeakForAWindow() {
    Estimate estimate = estimate(1, 2, old(1, 0.2), young(1, 0.2));
    assertThat(Math.exp(estimate.logBayesFactor().orElseThrow())).isCloseTo(0.36, within(1e-14));
    assertThat(estimate.cleanChance()).isCloseTo(9.0 / 34, within(1e-14));
    assertThat(estimate.windowChance()).isCloseTo(25.0 / 34, within(1e-14));
    assertThat(estimate.densest()).containsExactly(new Bounds(1, 2));
    assertThat(estimate.credible()).containsExactly(new Bounds(1, 2));
    assertThat(estimate.window()).hasValue(new WindowStretches(new Bounds(1, 1), new Bounds(2, 2)));
    assertThat(estimate.suspects()).isEmpty();
  }

  /**
   * Candidates 1 to 3, new at 1 and old at 2, x/2 = 1/10. Clean: 1: new right, old wrong 9/100; 2:
   * both wrong 1/100; 3: 9/100. Windows: (1,2) half and wrong 5/100; (1,3) 25/100; (2,3) 5/100.
   * Means 19/300 and 35/300.
   */
  @Test
  void anInvertedPairSpeaksForAWindowAndLeavesTwoEqualStretches() {
    Estimate estimate = estimate(1, 3, young(1, 0.2), old(2, 0.2));
    assertThat(estimate.cleanChance()).isCloseTo(19.0 / 54, within(1e-14));
    assertThat(estimate.densest()).containsExactly(new Bounds(1, 1), new Bounds(3, 3));
    // 9/19 each: together 18/19, which is less than 0.95, so the last one is needed too.
    assertThat(estimate.credible()).containsExactly(new Bounds(1, 3));
    assertThat(estimate.window()).hasValue(new WindowStretches(new Bounds(1, 1), new Bounds(3, 3)));
    // New at 1 is before the cut-in: clean 10/19, windows 5/35: 19/54·10/19 + 35/54·5/35 = 15/54.
    assertThat(estimate.suspects()).isEmpty();
    assertThat(estimate.growth())
        .extracting(Estimate.Point::ordinal)
        .containsExactly(0L, 1L, 2L, 3L);
    // At 1: clean 9/19; inside 30/35, half: 19/54·9/19 + 35/54·15/35 = 24/54.
    assertThat(estimate.growth().get(1).chance()).isCloseTo(24.0 / 54, within(1e-14));
  }

  @Test
  void whereTheRecordNamesOneSerialThereIsOnlyTheCleanModel() {
    Estimate estimate = estimate(5, 5, old(3), young(9), young(2), old(5));
    assertThat(estimate.cleanChance()).isEqualTo(1);
    assertThat(estimate.windowChance()).isZero();
    assertThat(estimate.logBayesFactor()).isEmpty();
    assertThat(estimate.window()).isEmpty();
    assertThat(estimate.densest()).containsExactly(new Bounds(5, 5));
    assertThat(estimate.credible()).containsExactly(new Bounds(5, 5));
    assertThat(estimate.suspects())
        .extracting(s -> s.sighting().airframe(), Suspect::chance)
        .containsExactly(tuple("new-2"), tuple("old-5"));
  }

  private static org.assertj.core.groups.Tuple tuple(String airframe) {
    return org.assertj.core.groups.Tuple.tuple(airframe, 1.0);
  }

  @Test
  void withoutObservationsEverythingIsAsLikelyAsBeforehand() {
    Estimate estimate = estimate(10, 29);
    assertThat(estimate.cleanChance()).isCloseTo(0.5, within(1e-15));
    assertThat(estimate.densest()).containsExactly(new Bounds(10, 29));
    assertThat(estimate.credible()).containsExactly(new Bounds(10, 29));
    assertThat(estimate.window())
        .hasValue(new WindowStretches(new Bounds(10, 28), new Bounds(11, 29)));
    assertThat(estimate.suspects()).isEmpty();
    assertThat(estimate.growth()).extracting(Estimate.Point::chance).containsExactly(0.0, 1.0);
  }

  @Test
  void airframesOutsideTheBoundsTellNothingOfTheCutInAndMayStillBeSuspect() {
    Estimate estimate = estimate(10, 20, old(3), young(5), young(20), old(31));
    assertThat(estimate.cleanChance()).isCloseTo(0.5, within(1e-14));
    assertThat(estimate.credible()).containsExactly(new Bounds(10, 20));
    assertThat(estimate.suspects())
        .extracting(s -> s.sighting().ordinal(), Suspect::chance)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(5L, 1.0),
            org.assertj.core.groups.Tuple.tuple(31L, 1.0));
  }

  @Test
  void aLetterAfterTheDigitsDoesNotMoveAnAirframe() {
    Sighting lettered = new Sighting("a", new Serial(40, 'B'), false, 0.05);
    Estimate estimate = estimate(1, 100, lettered, old(40), young(61));
    assertThat(estimate.densest()).containsExactly(new Bounds(41, 61));
    assertThat(estimate.sightings()).hasSize(3);
  }

  @Test
  void anExchangedPartIsPointedOut() {
    Estimate estimate =
        estimate(1, 100, old(10), young(15), old(20), old(30), old(40), young(60), young(70));
    assertThat(estimate.suspects()).hasSize(1);
    assertThat(estimate.suspects().get(0).sighting().ordinal()).isEqualTo(15);
    assertThat(estimate.suspects().get(0).chance()).isBetween(0.6, 0.7);
    assertThat(estimate.densest()).containsExactly(new Bounds(41, 60));
  }

  @Test
  void aLongMixtureSpeaksForAWindow() {
    Estimate estimate =
        estimate(
            1, 100, old(10), old(20), young(30), old(35), young(40), old(50), young(55), old(60),
            young(70), young(80));
    assertThat(estimate.windowChance()).isGreaterThan(0.9);
    assertThat(estimate.window())
        .hasValue(new WindowStretches(new Bounds(21, 30), new Bounds(61, 70)));
    assertThat(estimate.suspects()).isEmpty();
  }

  @Test
  void boundsThatContradictEachOtherAreNone() {
    assertThatThrownBy(() -> new Bounds(20, 10))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("from 20 cannot end at 10");
    assertThatThrownBy(() -> new Bounds(-1, 10)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void anExchangeChanceThatTellsNothingIsNone() {
    for (double chance : List.of(0.0, 1.0, -0.1, 1.5, Double.NaN)) {
      assertThatThrownBy(() -> old(5, chance)).isInstanceOf(IllegalArgumentException.class);
    }
  }
}
