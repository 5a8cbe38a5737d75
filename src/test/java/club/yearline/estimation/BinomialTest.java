package club.yearline.estimation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import club.yearline.effectivity.Serial;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Where all airframes stand on the first of two candidates, both models are binomial, and the Bayes
 * factor is a ratio of binomial probabilities. These are taken from Apache Commons Statistics 1.3
 * ({@code BinomialDistribution}), which shares no code with the estimate.
 */
class BinomialTest {

  @ParameterizedTest
  @CsvSource({
    "1, 0, 0.05",
    "1, 1, 0.05",
    "10, 5, 0.05",
    "10, 9, 0.2",
    "40, 39, 0.01",
    "400, 180, 0.001",
    "4000, 3900, 0.05",
    "10000, 5000, 0.2",
    "10000, 9950, 0.01",
  })
  void theBayesFactorIsThatOfBinomialDistributions(int all, int young, double exchange) {
    List<Sighting> sightings = new ArrayList<>();
    for (int i = 0; i < all; i++) {
      sightings.add(new Sighting("a" + i, Serial.of(7), i < young, exchange));
    }
    double ifNew = BinomialDistribution.of(all, 1 - exchange / 2).logProbability(young);
    double ifOld = BinomialDistribution.of(all, exchange / 2).logProbability(young);
    double ifMixed = BinomialDistribution.of(all, 0.5).logProbability(young);
    double greater = Math.max(ifNew, ifOld);
    double clean = greater + Math.log1p(Math.exp(Math.min(ifNew, ifOld) - greater)) - Math.log(2);
    Estimate estimate = Estimate.of(new Bounds(7, 8), sightings);
    // The library's own logarithms of factorials are good to about thirteen digits.
    assertThat(estimate.logBayesFactor().orElseThrow())
        .isCloseTo(clean - ifMixed, within(1e-9 * Math.max(1, Math.abs(clean - ifMixed))));
  }
}
