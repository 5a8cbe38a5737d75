package club.yearline.spotting;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/** Parts of one whole. */
final class Shares {

  private Shares() {}

  /** Shares that sum to 1, of logarithms known up to a constant; none of none. */
  static double[] of(double[] logs) {
    double highest = Arrays.stream(logs).max().orElse(0);
    double[] shares = Arrays.stream(logs).map(log -> Math.exp(log - highest)).toArray();
    double sum = Arrays.stream(shares).sum();
    for (int i = 0; i < shares.length; i++) {
      shares[i] /= sum;
    }
    return shares;
  }

  /** The indexes, greatest share first; equal shares keep their order. */
  static int[] ranked(double[] shares) {
    return IntStream.range(0, shares.length)
        .boxed()
        .sorted(Comparator.comparingDouble(i -> -shares[i]))
        .mapToInt(Integer::intValue)
        .toArray();
  }
}
