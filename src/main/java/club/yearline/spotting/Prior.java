package club.yearline.spotting;

import club.yearline.effectivity.VariantModel;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * How many airframes of each pair to reckon with before anything is seen: the serials of its blocks
 * (a block without a year counts in equal parts for the years of the variant's runs). A pair
 * without blocks weighs the mean of its family's pairs that have some, else of all pairs considered
 * that have some, else 1. Where one family alone is considered, what its pairs without blocks weigh
 * is of no account unless others have some, since only ratios matter.
 */
final class Prior {

  private final double[] weights;
  private final Map<String, OptionalDouble> meansOfFamilies = new HashMap<>();
  private final OptionalDouble mean;

  /** Weighs the pairs in the order of the models and their years. */
  Prior(List<VariantModel> models) {
    double[][] built = models.stream().map(Prior::built).toArray(double[][]::new);
    Map<String, double[]> known = new HashMap<>();
    for (int i = 0; i < built.length; i++) {
      known.merge(models.get(i).family().key(), built[i], Prior::joined);
    }
    known.forEach((family, airframes) -> meansOfFamilies.put(family, mean(airframes)));
    this.mean = mean(Arrays.stream(built).flatMapToDouble(Arrays::stream).toArray());
    for (int i = 0; i < built.length; i++) {
      double instead = instead(models.get(i).family().key());
      built[i] = Arrays.stream(built[i]).map(b -> b > 0 ? b : instead).toArray();
    }
    this.weights = Arrays.stream(built).flatMapToDouble(Arrays::stream).toArray();
  }

  /** A weight above 0 for each pair. */
  double[] weights() {
    return weights.clone();
  }

  /** What a pair of the family weighs that has no blocks. */
  double instead(String family) {
    OptionalDouble own = meansOfFamilies.getOrDefault(family, OptionalDouble.empty());
    return own.isPresent() ? own.getAsDouble() : mean.orElse(1);
  }

  /** The airframes of each of a variant's years; 0 for a year without blocks. */
  private static double[] built(VariantModel model) {
    int[] years = model.years();
    double each = years.length == 0 ? 0 : model.airframes(null) / years.length;
    return Arrays.stream(years).mapToDouble(year -> model.airframes(year) + each).toArray();
  }

  private static double[] joined(double[] one, double[] other) {
    double[] both = Arrays.copyOf(one, one.length + other.length);
    System.arraycopy(other, 0, both, one.length, other.length);
    return both;
  }

  private static OptionalDouble mean(double[] airframes) {
    return Arrays.stream(airframes).filter(a -> a > 0).average();
  }
}
