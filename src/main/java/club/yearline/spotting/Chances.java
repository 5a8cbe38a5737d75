package club.yearline.spotting;

import java.util.Set;
import java.util.TreeSet;

/**
 * The chance that each value of a feature is seen now (domain: {@code P(v)}). Few values differ
 * from the rest, so only those are held.
 */
final class Chances {

  /** A value recorded as a retrofit has at least this chance of having been exchanged for. */
  private static final double RETROFIT = 0.10;

  private final double rest;
  private final int[] listed;
  private final double[] chances;
  private final boolean[] built;
  private final boolean restBuilt;
  private final double sum;
  private final double bits;

  private Chances(
      double rest, int[] listed, double[] chances, boolean[] built, boolean restBuilt, int values) {
    this.rest = rest;
    this.listed = listed;
    this.chances = chances;
    this.built = built;
    this.restBuilt = restBuilt;
    double total = rest * (values - listed.length);
    for (double chance : chances) {
      total += chance;
    }
    this.sum = total;
    this.bits = bits(values);
  }

  /**
   * Makes them of what left the factory.
   *
   * @param retrofitted the values that a retrofit may have brought
   * @param exchange the feature's exchange chance, 0 to 1
   */
  static Chances of(AsBuilt built, Set<String> retrofitted, double exchange, SeenValues values) {
    Set<String> named = new TreeSet<>(built.named().keySet());
    named.addAll(retrofitted);
    int[] listed = named.stream().mapToInt(values::index).filter(i -> i >= 0).toArray();
    double[] chances = new double[listed.length];
    boolean[] left = new boolean[listed.length];
    double background = built.anything() / values.size();
    for (int i = 0; i < listed.length; i++) {
      String value = values.at(listed[i]);
      double x = retrofitted.contains(value) ? Math.max(exchange, RETROFIT) : exchange;
      double asBuilt = background + built.named().getOrDefault(value, 0.0);
      chances[i] = (1 - x) * asBuilt + x / values.size();
      left[i] = asBuilt > 0;
    }
    double rest = (1 - exchange) * background + exchange / values.size();
    return new Chances(rest, listed, chances, left, background > 0, values.size());
  }

  /** The chance of the value with the index. */
  double of(int value) {
    for (int i = 0; i < listed.length; i++) {
      if (listed[i] == value) {
        return chances[i];
      }
    }
    return rest;
  }

  /** Whether an airframe may have left the factory with the value with the index. */
  boolean isBuilt(int value) {
    for (int i = 0; i < listed.length; i++) {
      if (listed[i] == value) {
        return built[i];
      }
    }
    return restBuilt;
  }

  /** The entropy in bits of the chances, each divided by their sum. */
  double bits() {
    return bits;
  }

  /**
   * Adds the chances, divided by their sum and weighted, to totals.
   *
   * @param extra by value, what is above {@link #rest}
   * @return what every value has at least
   */
  double addTo(double[] extra, double weight) {
    for (int i = 0; i < listed.length; i++) {
      extra[listed[i]] += weight * (chances[i] - rest) / sum;
    }
    return weight * rest / sum;
  }

  private double bits(int values) {
    double total = (values - listed.length) * Bits.of(rest / sum);
    for (double chance : chances) {
      total += Bits.of(chance / sum);
    }
    return total;
  }
}
