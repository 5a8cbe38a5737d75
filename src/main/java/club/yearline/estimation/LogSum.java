package club.yearline.estimation;

/** A sum of numbers given and told by their natural logarithms, too small or great to be held. */
final class LogSum {

  private double greatest = Double.NEGATIVE_INFINITY;
  private double scaled;

  /** Adds a number. */
  LogSum add(double log) {
    if (log == Double.NEGATIVE_INFINITY) {
      return this;
    }
    if (log <= greatest) {
      scaled += Math.exp(log - greatest);
    } else {
      scaled = scaled * Math.exp(greatest - log) + 1;
      greatest = log;
    }
    return this;
  }

  /** The logarithm of the sum so far; negative infinity while nothing was added. */
  double log() {
    return scaled == 0 ? Double.NEGATIVE_INFINITY : greatest + Math.log(scaled);
  }
}
