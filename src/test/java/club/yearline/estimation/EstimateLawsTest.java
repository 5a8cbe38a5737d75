package club.yearline.estimation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import club.yearline.effectivity.Serial;
import club.yearline.testing.Dice;
import club.yearline.testing.Seeds;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.LongUnaryOperator;
import org.junit.jupiter.api.Test;

/** What holds for every estimate, on thousands of small random cases. */
class EstimateLawsTest {

  private static final int SEEDS = 4000;
  private static final double CLOSE = 1e-10;

  @Test
  void theChancesAreThoseOfEnumeratingEveryCandidateAndEveryPair() {
    Seeds.check(
        SEEDS,
        Samples::few,
        (few, dice) -> {
          Bounds bounds = bounds(dice);
          Estimate estimate = Estimate.of(bounds, few);
          SlowEstimate slow = new SlowEstimate(bounds, few);
          assertThat(estimate.cleanChance()).isCloseTo(slow.cleanChance(), within(CLOSE));
          assertThat(estimate.windowChance()).isCloseTo(1 - slow.cleanChance(), within(CLOSE));
          estimate
              .logBayesFactor()
              .ifPresent(
                  log -> assertThat(log).isCloseTo(Math.log(slow.bayesFactor()), within(CLOSE)));
          assertThat(estimate.logBayesFactor().isPresent()).isEqualTo(bounds.size() > 1);
        });
  }

  @Test
  void theStretchesAreThoseOfEnumeratingEveryCandidateAndEveryPair() {
    Seeds.check(
        SEEDS,
        Samples::few,
        (few, dice) -> {
          Bounds bounds = bounds(dice);
          Estimate estimate = Estimate.of(bounds, few);
          SlowEstimate slow = new SlowEstimate(bounds, few);
          assertThat(estimate.densest()).isEqualTo(slow.densest());
          assertThat(estimate.credible()).isEqualTo(slow.credible());
          estimate.window().ifPresent(window -> assertThat(window).isEqualTo(slow.window()));
          assertThat(estimate.window().isPresent()).isEqualTo(bounds.size() > 1);
        });
  }

  @Test
  void theSuspectsAndTheGrowthAreThoseOfEnumeratingEveryCandidateAndEveryPair() {
    Seeds.check(
        SEEDS / 2,
        Samples::few,
        (few, dice) -> {
          Bounds bounds = bounds(dice);
          Estimate estimate = Estimate.of(bounds, few);
          SlowEstimate slow = new SlowEstimate(bounds, few);
          List<Sighting> suspects = few.stream().filter(s -> slow.contradiction(s) > 0.5).toList();
          assertThat(estimate.suspects().stream().map(Suspect::sighting))
              .containsExactlyInAnyOrderElementsOf(suspects);
          estimate
              .suspects()
              .forEach(
                  s ->
                      assertThat(s.chance())
                          .isCloseTo(slow.contradiction(s.sighting()), within(CLOSE)));
          estimate
              .growth()
              .forEach(
                  p -> assertThat(p.chance()).isCloseTo(slow.growth(p.ordinal()), within(CLOSE)));
        });
  }

  @Test
  void theOrderInWhichAirframesAreGivenDoesNotMatter() {
    Seeds.check(
        SEEDS / 4,
        Samples::few,
        (few, dice) -> {
          Bounds bounds = bounds(dice);
          List<Sighting> shuffled = new ArrayList<>(few);
          Collections.reverse(shuffled);
          assertSame(Estimate.of(bounds, few), Estimate.of(bounds, shuffled));
        });
  }

  @Test
  void itIsTheSameWhereverTheSerialsBegin() {
    Seeds.check(
        SEEDS / 4,
        Samples::few,
        (few, dice) -> {
          Bounds bounds = bounds(dice);
          long by = dice.between(1, 1_000_000_000) * 100_000_000L;
          Estimate moved = Estimate.of(moved(bounds, o -> o + by), moved(few, false, o -> o + by));
          Estimate estimate = Estimate.of(bounds, few);
          assertThat(moved.cleanChance()).isEqualTo(estimate.cleanChance());
          assertThat(moved.densest()).isEqualTo(moved(estimate.densest(), o -> o + by));
          assertThat(moved.credible()).isEqualTo(moved(estimate.credible(), o -> o + by));
        });
  }

  /** Old and new change sides: the first new one becomes the last old one, one serial beside. */
  @Test
  void theMirroredCaseHasTheMirroredAnswer() {
    Seeds.check(
        SEEDS / 4,
        Samples::few,
        (few, dice) -> {
          Bounds bounds = bounds(dice);
          // Room for the ordinals to stay above 0.
          long sum = bounds.first() + bounds.last() + 99;
          Bounds there = new Bounds(sum + 1 - bounds.last(), sum + 1 - bounds.first());
          Estimate mirrored = Estimate.of(there, moved(few, true, o -> sum - o));
          Estimate estimate = Estimate.of(bounds, few);
          assertThat(mirrored.cleanChance()).isCloseTo(estimate.cleanChance(), within(CLOSE));
          List<Bounds> densest = new ArrayList<>();
          for (Bounds range : mirrored.densest()) {
            densest.add(0, new Bounds(sum + 1 - range.last(), sum + 1 - range.first()));
          }
          assertThat(densest).isEqualTo(estimate.densest());
          assertThat(mirrored.suspects()).hasSameSizeAs(estimate.suspects());
          int last = estimate.growth().size() - 1;
          for (int i = 0; i <= last; i++) {
            assertThat(mirrored.growth().get(last - i).chance())
                .isCloseTo(1 - estimate.growth().get(i).chance(), within(CLOSE));
          }
        });
  }

  /** Only the share of each stretch counts for a clean cut-in, not how many serials it has. */
  @Test
  void moreSerialsBetweenAllAirframesMoveTheCleanAnswerWithThem() {
    Seeds.check(
        SEEDS / 4,
        Samples::few,
        (few, dice) -> {
          Bounds bounds = bounds(dice);
          long by = dice.between(2, 1_000_000);
          // A stretch ends at an airframe: (a, b] becomes (a·by, b·by].
          Estimate spread =
              Estimate.of(
                  new Bounds((bounds.first() - 1) * by + 1, bounds.last() * by),
                  moved(few, false, o -> o * by));
          Estimate estimate = Estimate.of(bounds, few);
          assertThat(spread.densest()).isEqualTo(spread(estimate.densest(), by));
          assertThat(spread.credible()).isEqualTo(spread(estimate.credible(), by));
        });
  }

  private static List<Bounds> spread(List<Bounds> ranges, long by) {
    return ranges.stream().map(r -> new Bounds((r.first() - 1) * by + 1, r.last() * by)).toList();
  }

  @Test
  void withManySerialsOnlyTheSharesOfTheStretchesCount() {
    Seeds.check(
        SEEDS / 4,
        Samples::few,
        (few, dice) -> {
          Bounds bounds = new Bounds(1, 18);
          double million = spreadBy(few, bounds, 1_000_000).cleanChance();
          double billion = spreadBy(few, bounds, 1_000_000_000).cleanChance();
          assertThat(million).isCloseTo(billion, within(1e-5));
        });
  }

  private static Estimate spreadBy(List<Sighting> few, Bounds bounds, long by) {
    return Estimate.of(
        new Bounds((bounds.first() - 1) * by + 1, bounds.last() * by),
        moved(few, false, o -> o * by));
  }

  @Test
  void whatAllCandidatesExplainAlikeChangesNothing() {
    Seeds.check(
        SEEDS / 4,
        Samples::few,
        (few, dice) -> {
          Bounds bounds = new Bounds(3, 17);
          List<Sighting> more = new ArrayList<>(few);
          more.add(new Sighting("below", Serial.of(2), dice.chance(0.5), 0.05));
          more.add(new Sighting("above", Serial.of(17), dice.chance(0.5), 0.2));
          Estimate with = Estimate.of(bounds, more);
          Estimate without = Estimate.of(bounds, few);
          assertThat(with.cleanChance()).isCloseTo(without.cleanChance(), within(CLOSE));
          assertThat(with.growth()).hasSameSizeAs(without.growth());
        });
  }

  private static void assertSame(Estimate one, Estimate other) {
    assertThat(one.cleanChance()).isEqualTo(other.cleanChance());
    assertThat(one.credible()).isEqualTo(other.credible());
    assertThat(one.densest()).isEqualTo(other.densest());
    assertThat(one.window()).isEqualTo(other.window());
    assertThat(one.growth()).isEqualTo(other.growth());
    assertThat(one.suspects()).containsExactlyInAnyOrderElementsOf(other.suspects());
  }

  private static Bounds bounds(Dice dice) {
    int first = dice.between(1, 17);
    return new Bounds(first, dice.between(first, 18));
  }

  private static Bounds moved(Bounds range, LongUnaryOperator move) {
    return new Bounds(move.applyAsLong(range.first()), move.applyAsLong(range.last()));
  }

  private static List<Bounds> moved(List<Bounds> ranges, LongUnaryOperator move) {
    return ranges.stream().map(r -> moved(r, move)).toList();
  }

  private static List<Sighting> moved(List<Sighting> few, boolean swap, LongUnaryOperator move) {
    return few.stream()
        .map(
            s ->
                new Sighting(
                    s.airframe(),
                    Serial.of(move.applyAsLong(s.ordinal())),
                    s.isNew() != swap,
                    s.exchange()))
        .toList();
  }
}
