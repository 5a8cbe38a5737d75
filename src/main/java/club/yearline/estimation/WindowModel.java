package club.yearline.estimation;

/**
 * The transition between two serials: each pair of candidates, the first below the second, is as
 * likely beforehand. The chance of a pair is a product of one factor for its first and one for its
 * second, so that sums over all pairs are running sums over the cells.
 */
final class WindowModel {

  /** Chances whose logarithms differ by less are the same, but for rounding. */
  private static final double ROUNDING = 1e-9;

  private final Cells cells;
  private final Likelihoods likelihoods;
  private final double logEvidence;

  /** For each cell, the chance that the window begins above it. */
  private final double[] beginsAbove;

  /** For each cell, the chance that the window ends in it or below. */
  private final double[] endsUpTo;

  WindowModel(Cells cells, Likelihoods likelihoods) {
    this.cells = cells;
    this.likelihoods = likelihoods;
    double[] begins = beginning();
    this.beginsAbove = Shares.above(begins);
    this.endsUpTo = Shares.upTo(ending());
    LogSum sum = new LogSum();
    for (double begin : begins) {
      sum.add(begin);
    }
    this.logEvidence = sum.log() - Cells.logPairs(cells.size());
  }

  /** Sums over all ends of windows that begin in each cell. */
  private double[] beginning() {
    double[] logs = new double[cells.count()];
    LogSum later = new LogSum();
    for (int cell = logs.length - 1; cell >= 0; cell--) {
      double size = cells.logSize(cell);
      logs[cell] =
          new LogSum().add(within(cell)).add(size + likelihoods.begins[cell] + later.log()).log();
      later.add(size + likelihoods.ends[cell]);
    }
    return logs;
  }

  /** Sums over all beginnings of windows that end in each cell. */
  private double[] ending() {
    double[] logs = new double[cells.count()];
    LogSum earlier = new LogSum();
    for (int cell = 0; cell < logs.length; cell++) {
      double size = cells.logSize(cell);
      logs[cell] =
          new LogSum().add(within(cell)).add(size + likelihoods.ends[cell] + earlier.log()).log();
      earlier.add(size + likelihoods.begins[cell]);
    }
    return logs;
  }

  /** The sum over windows that begin and end in a cell: no airframe stands inside one. */
  private double within(int cell) {
    return cells.logPairs(cell) + likelihoods.clean[cell];
  }

  /** The logarithm of the chance of all that was seen. */
  double logEvidence() {
    return logEvidence;
  }

  /** The chance that the window begins in none of the first cells. */
  double beginsAbove(int count) {
    return count == 0 ? 1 : beginsAbove[count - 1];
  }

  /** The chance that the window ends in one of the first cells. */
  double endsUpTo(int count) {
    return count == 0 ? 0 : endsUpTo[count - 1];
  }

  /**
   * The cells of the pairs of greatest chance; of several, those of the lowest first, then last.
   */
  WindowStretches densest() {
    double[] best = bestFrom();
    double greatest = Double.NEGATIVE_INFINITY;
    for (double one : best) {
      greatest = Math.max(greatest, one);
    }
    int begin = 0;
    while (best[begin] < greatest - ROUNDING) {
      begin++;
    }
    int end = begin;
    while (pair(begin, end) < greatest - ROUNDING) {
      end++;
    }
    return stretches(begin, end);
  }

  /** For each cell, the greatest chance of a pair that begins in it. */
  private double[] bestFrom() {
    double[] best = new double[cells.count()];
    double later = Double.NEGATIVE_INFINITY;
    for (int cell = best.length - 1; cell >= 0; cell--) {
      best[cell] = Math.max(pair(cell, cell), likelihoods.begins[cell] + later);
      later = Math.max(later, likelihoods.ends[cell]);
    }
    return best;
  }

  /** The chance of a pair; none where a single candidate is no pair. */
  private double pair(int begin, int end) {
    if (begin < end) {
      return likelihoods.begins[begin] + likelihoods.ends[end];
    }
    return cells.first(begin) == cells.last(begin)
        ? Double.NEGATIVE_INFINITY
        : likelihoods.clean[begin];
  }

  private WindowStretches stretches(int begin, int end) {
    Bounds first = run(likelihoods.begins, begin);
    Bounds settled = run(likelihoods.ends, end);
    return new WindowStretches(
        new Bounds(first.first(), Math.min(first.last(), settled.last() - 1)),
        new Bounds(Math.max(settled.first(), first.first() + 1), settled.last()));
  }

  /** The cells around one whose factor is the same. */
  private Bounds run(double[] factors, int cell) {
    int from = cell;
    while (from > 0 && Math.abs(factors[from - 1] - factors[cell]) < ROUNDING) {
      from--;
    }
    int to = cell;
    while (to + 1 < factors.length && Math.abs(factors[to + 1] - factors[cell]) < ROUNDING) {
      to++;
    }
    return cells.range(from, to);
  }
}
