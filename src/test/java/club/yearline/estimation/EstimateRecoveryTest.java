package club.yearline.estimation;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.effectivity.Exchange;
import club.yearline.effectivity.Serial;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Truths drawn as the model says they are, airframes made from them, and estimates of these: what
 * the estimates claim must come true as often as they claim. The seeds are fixed; the bounds are
 * three standard errors of what is counted, so that a right estimate passes for nearly every seed.
 */
class EstimateRecoveryTest {

  private static final int RUNS = 3000;
  private static final Bounds CANDIDATES = new Bounds(101, 300);

  /** What is true: where it began, and from where all are new; the same for a clean cut-in. */
  private record Truth(long first, long settled) {

    static Truth draw(Random random) {
      long one = among(random, CANDIDATES);
      if (random.nextBoolean()) {
        return new Truth(one, one);
      }
      long other = among(random, CANDIDATES);
      while (other == one) {
        other = among(random, CANDIDATES);
      }
      return new Truth(Math.min(one, other), Math.max(one, other));
    }

    boolean isClean() {
      return first == settled;
    }

    Sighting sight(String name, double exchange, Random random) {
      long ordinal = among(random, new Bounds(81, 320));
      boolean isNew = ordinal >= settled || (ordinal >= first && random.nextBoolean());
      // Exchanged for old or new alike: half of those exchanged show what was there before.
      boolean seen = random.nextDouble() < exchange / 2 ? !isNew : isNew;
      return new Sighting(name, Serial.of(ordinal), seen, exchange);
    }

    boolean isContradictedBy(Sighting sighting) {
      return sighting.isNew() ? sighting.ordinal() < first : sighting.ordinal() >= settled;
    }
  }

  private static long among(Random random, Bounds range) {
    return range.first() + random.nextInt((int) range.size());
  }

  private static List<Sighting> sightings(Truth truth, double exchange, Random random) {
    List<Sighting> sightings = new ArrayList<>();
    int count = 5 + random.nextInt(60);
    for (int i = 0; i < count; i++) {
      sightings.add(truth.sight("a" + i, exchange, random));
    }
    return sightings;
  }

  @ParameterizedTest
  @EnumSource(Exchange.class)
  void aCleanCutInLiesInTheSetOfNinetyFivePercentAsOftenAsItSays(Exchange exchange) {
    Random random = new Random(64 + exchange.ordinal());
    Tally inside = new Tally();
    while (inside.count < RUNS) {
      Truth truth = Truth.draw(random);
      if (truth.isClean()) {
        Estimate estimate = Estimate.of(CANDIDATES, sightings(truth, exchange.chance(), random));
        // Whole stretches hold more than 0.95: the set is held to its own share of the whole.
        inside.add(share(estimate), holds(estimate.credible(), truth.first()));
      }
    }
    assertThat(inside.claimed()).isGreaterThanOrEqualTo(0.95);
    inside.assertClaimsComeTrue();
  }

  private static boolean holds(List<Bounds> ranges, long ordinal) {
    return ranges.stream().anyMatch(r -> r.holds(ordinal));
  }

  /** The share of the set, cell by cell. */
  private static double share(Estimate estimate) {
    CleanModel clean = clean(estimate);
    Cells cells = new Cells(estimate.candidates(), estimate.sightings());
    double share = 0;
    for (int cell = 0; cell < cells.count(); cell++) {
      if (holds(estimate.credible(), cells.last(cell))) {
        share += clean.upTo(cell + 1) - clean.upTo(cell);
      }
    }
    return share;
  }

  private static CleanModel clean(Estimate estimate) {
    Cells cells = new Cells(estimate.candidates(), estimate.sightings());
    return new CleanModel(cells, new Likelihoods(cells, estimate.sightings()));
  }

  @ParameterizedTest
  @EnumSource(Exchange.class)
  void theModelsAreTrueAsOftenAsTheirChancesSay(Exchange exchange) {
    Random random = new Random(128 + exchange.ordinal());
    Tally clean = new Tally();
    Tally likely = new Tally();
    for (int run = 0; run < RUNS; run++) {
      Truth truth = Truth.draw(random);
      Estimate estimate = Estimate.of(CANDIDATES, sightings(truth, exchange.chance(), random));
      clean.add(estimate.cleanChance(), truth.isClean());
      likely.add(
          Math.max(estimate.cleanChance(), estimate.windowChance()),
          truth.isClean() == estimate.cleanChance() > 0.5);
    }
    clean.assertClaimsComeTrue();
    likely.assertClaimsComeTrue();
  }

  @ParameterizedTest
  @EnumSource(Exchange.class)
  void suspectsAreExchangedPartsAsOftenAsTheirChancesSay(Exchange exchange) {
    Random random = new Random(256 + exchange.ordinal());
    Tally exchanged = new Tally();
    for (int run = 0; run < RUNS; run++) {
      Truth truth = Truth.draw(random);
      Estimate.of(CANDIDATES, sightings(truth, exchange.chance(), random)).suspects().stream()
          // Those of one estimate come true together; one of each keeps the counts independent.
          .limit(1)
          .forEach(s -> exchanged.add(s.chance(), truth.isContradictedBy(s.sighting())));
    }
    exchanged.assertClaimsComeTrue();
  }

  /** Claims with a chance, and whether they came true. */
  private static final class Tally {

    private int count;
    private int came;
    private double expected;
    private double variance;

    void add(double chance, boolean cameTrue) {
      count++;
      came += cameTrue ? 1 : 0;
      expected += chance;
      variance += chance * (1 - chance);
    }

    double claimed() {
      return expected / count;
    }

    void assertClaimsComeTrue() {
      assertThat(count).isGreaterThan(10);
      assertThat((double) came)
          .isBetween(expected - 3 * Math.sqrt(variance), expected + 3 * Math.sqrt(variance));
    }
  }
}
