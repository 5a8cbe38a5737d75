package club.yearline.spotting;

import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.Possible;
import club.yearline.effectivity.Stretch;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The chance that an airframe left the factory with each value (domain: {@code A(v)}).
 *
 * @param anything the part (0 to 1) spread equally over all values: "nothing recorded"
 * @param named the rest, by value; with {@code anything} it sums to 1
 */
record AsBuilt(double anything, Map<String, Double> named) {

  /** Chance of an option whose take rate is not recorded. */
  private static final double USUAL_TAKE_RATE = 0.25;

  /** Options beside a standard value leave it at least the rest. */
  private static final double MOST_OF_ALL_OPTIONS = 0.75;

  /** Nothing recorded, or a feature that does not belong to the variant: uniform. */
  static final AsBuilt UNKNOWN = new AsBuilt(1, Map.of());

  /** What an answer says. */
  static AsBuilt of(Answer answer) {
    return switch (answer.state()) {
      case UNRECORDED -> UNKNOWN;
      case SETTLED, TRANSITION, OPEN -> ofPossible(answer.feature(), answer.possible());
      case SPLITS -> ofStretches(answer.stretches());
    };
  }

  private static AsBuilt ofPossible(Feature feature, List<Possible> possible) {
    Mix mix = new Mix();
    possible.forEach(p -> mix.add(p.isNothing() ? UNKNOWN : ofOffering(feature, p.offering()), 1));
    return mix.made();
  }

  /** Weighted by airframes; equally where the stretches hold none that count. */
  private static AsBuilt ofStretches(List<Stretch> stretches) {
    boolean counted = stretches.stream().anyMatch(s -> s.airframes() > 0);
    Mix mix = new Mix();
    stretches.forEach(s -> mix.add(of(s.answer()), counted ? s.airframes() : 1));
    return mix.made();
  }

  private static AsBuilt ofOffering(Feature feature, List<Offered> offering) {
    long standards = offering.stream().filter(o -> o.fit() == Fit.STANDARD).count();
    double options = offering.stream().mapToDouble(AsBuilt::takeRate).sum();
    double scale = options > MOST_OF_ALL_OPTIONS ? MOST_OF_ALL_OPTIONS / options : 1;
    Map<String, Double> chances = new HashMap<>();
    for (Offered one : offering) {
      double chance =
          standards == 0
              ? 1.0 / offering.size()
              : one.fit() == Fit.STANDARD
                  ? (1 - options * scale) / standards
                  : takeRate(one) * scale;
      chances.merge(Seen.text(feature, one.value()), chance, Double::sum);
    }
    return new AsBuilt(0, chances);
  }

  private static double takeRate(Offered offered) {
    if (offered.fit() == Fit.STANDARD) {
      return 0;
    }
    BigDecimal rate = offered.takeRate();
    return rate == null ? USUAL_TAKE_RATE : rate.doubleValue();
  }

  /** A weighted mean of distributions. */
  private static final class Mix {
    private final Map<String, Double> named = new HashMap<>();
    private double anything;
    private double weights;

    void add(AsBuilt part, double weight) {
      weights += weight;
      anything += weight * part.anything;
      part.named.forEach((value, chance) -> named.merge(value, weight * chance, Double::sum));
    }

    AsBuilt made() {
      named.replaceAll((value, chance) -> chance / weights);
      return new AsBuilt(anything / weights, named);
    }
  }
}
