package club.yearline.estimation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import club.yearline.effectivity.Serial;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Serials of 18 digits and ten thousand airframes. */
class EstimateExtremesTest {

  private static final Bounds ALL = new Bounds(0, Serial.MAX_ORDINAL + 1);
  private static final long TRUTH = 654_321_987_654_321_987L;

  @Test
  void allSerialsOfEighteenDigitsAreCandidates() {
    Estimate estimate = Estimate.of(ALL, List.of(Samples.old(TRUTH - 1), Samples.young(TRUTH)));
    assertThat(estimate.densest()).containsExactly(new Bounds(TRUTH, TRUTH));
    // One candidate among 10^18: whatever is seen, almost all of the chance lies elsewhere.
    assertThat(estimate.credible().stream().mapToLong(Bounds::size).sum())
        .isGreaterThan(900_000_000_000_000_000L);
    assertThat(estimate.cleanChance()).isBetween(0.0, 1.0);
  }

  @Test
  void withoutObservationsAllSerialsAreAlike() {
    Estimate estimate = Estimate.of(ALL, List.of());
    assertThat(estimate.cleanChance()).isCloseTo(0.5, within(1e-12));
    assertThat(estimate.credible()).containsExactly(ALL);
  }

  @Test
  void tenThousandAirframesPinTheCutInDown() {
    Estimate estimate = Estimate.of(ALL, many(10_000, TRUTH, TRUTH, 0.05));
    assertThat(estimate.credible()).hasSizeLessThan(4);
    assertThat(estimate.credible().get(0).first()).isLessThan(TRUTH);
    assertThat(estimate.credible().stream().anyMatch(r -> r.holds(TRUTH))).isTrue();
    assertThat(estimate.cleanChance()).isGreaterThan(0.99);
    long exchanged =
        estimate.sightings().stream().filter(s -> s.isNew() != (s.ordinal() >= TRUTH)).count();
    assertThat((long) estimate.suspects().size()).isBetween(exchanged - 5, exchanged + 5);
  }

  @Test
  void tenThousandAirframesPinAWindowDown() {
    long first = 200_000_000_000_000_000L;
    Estimate estimate = Estimate.of(ALL, many(10_000, first, TRUTH, 0.05));
    assertThat(estimate.windowChance()).isEqualTo(1);
    // The factor is far too small to be held: only its logarithm is.
    assertThat(estimate.logBayesFactor().orElseThrow()).isLessThan(-1000);
    WindowStretches window = estimate.window().orElseThrow();
    assertThat((double) window.first().first()).isCloseTo(first, within(2e15));
    assertThat((double) window.settled().last()).isCloseTo(TRUTH, within(2e15));
  }

  @Test
  void tenThousandAirframesOfOneSerialAreOneStretch() {
    List<Sighting> same = new ArrayList<>();
    for (int i = 0; i < 10_000; i++) {
      same.add(new Sighting("a" + i, new Serial(TRUTH, 'C'), i % 2 == 0, 0.2));
    }
    Estimate estimate = Estimate.of(ALL, same);
    assertThat(estimate.growth()).hasSize(3);
    assertThat(estimate.windowChance()).isEqualTo(1);
    assertThat(estimate.suspects()).isEmpty();
  }

  @Test
  void allThatContradictsIsStillAnEstimate() {
    List<Sighting> wrong = new ArrayList<>();
    for (int i = 0; i < 5_000; i++) {
      wrong.add(Samples.young(i, 0.001));
      wrong.add(Samples.old(Serial.MAX_ORDINAL - i, 0.001));
    }
    Estimate estimate = Estimate.of(new Bounds(5_000, Serial.MAX_ORDINAL - 5_000), wrong);
    assertThat(estimate.cleanChance()).isCloseTo(0.5, within(1e-9));
    assertThat(estimate.suspects()).hasSize(10_000).allMatch(s -> s.chance() == 1);
  }

  private static List<Sighting> many(int count, long first, long settled, double exchange) {
    Random random = new Random(18);
    List<Sighting> many = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      long ordinal = (long) (random.nextDouble() * Serial.MAX_ORDINAL);
      boolean isNew = ordinal >= settled || (ordinal >= first && random.nextBoolean());
      boolean seen = (random.nextDouble() < exchange / 2) != isNew;
      many.add(new Sighting("a" + i, Serial.of(ordinal), seen, exchange));
    }
    return many;
  }
}
