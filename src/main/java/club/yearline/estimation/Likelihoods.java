package club.yearline.estimation;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * The logarithms of the chances of what was seen, for candidates of each cell. They are counted
 * before they are multiplied, so that cells that agree with as many airframes are exactly equal.
 */
final class Likelihoods {

  private static final double LN2 = Math.log(2);

  /** For a clean cut-in in the cell. */
  final double[] clean;

  /** For a window that begins in the cell: of all below it, each against an even chance. */
  final double[] begins;

  /**
   * For a window that ends in the cell: of all from it on; of all below it, an even chance each.
   */
  final double[] ends;

  Likelihoods(Cells cells, List<Sighting> sightings) {
    List<Sighting> sorted =
        sightings.stream().sorted(Comparator.comparingLong(Sighting::ordinal)).toList();
    Tally tally = new Tally(sorted);
    clean = new double[cells.count()];
    begins = new double[cells.count()];
    ends = new double[cells.count()];
    int passed = 0;
    for (int cell = 0; cell < cells.count(); cell++) {
      while (passed < sorted.size() && sorted.get(passed).ordinal() < cells.first(cell)) {
        tally.pass(sorted.get(passed++));
      }
      clean[cell] = tally.log(true, true);
      begins[cell] = tally.log(true, false) + passed * LN2;
      ends[cell] = tally.log(false, true) - passed * LN2;
    }
  }

  /** Airframes below and above a candidate, by exchange chance and value. */
  private static final class Tally {

    private static final int OLD = 0;
    private static final int NEW = 1;

    private final double[] exchanges;
    private final int[][] below;
    private final int[][] above;

    Tally(List<Sighting> sightings) {
      exchanges = sightings.stream().mapToDouble(Sighting::exchange).sorted().distinct().toArray();
      below = new int[exchanges.length][2];
      above = new int[exchanges.length][2];
      sightings.forEach(s -> count(above, s, 1));
    }

    /** Goes on to candidates above an airframe. */
    void pass(Sighting sighting) {
      count(above, sighting, -1);
      count(below, sighting, 1);
    }

    private void count(int[][] side, Sighting sighting, int change) {
      int kind = Arrays.binarySearch(exchanges, sighting.exchange());
      side[kind][sighting.isNew() ? NEW : OLD] += change;
    }

    /** The chance of the airframes below, all being old, and of those above, all being new. */
    double log(boolean ofBelow, boolean ofAbove) {
      double sum = 0;
      for (int kind = 0; kind < exchanges.length; kind++) {
        int agree = (ofBelow ? below[kind][OLD] : 0) + (ofAbove ? above[kind][NEW] : 0);
        int differ = (ofBelow ? below[kind][NEW] : 0) + (ofAbove ? above[kind][OLD] : 0);
        sum += agree * Math.log1p(-exchanges[kind] / 2) + differ * Math.log(exchanges[kind] / 2);
      }
      return sum;
    }
  }
}
