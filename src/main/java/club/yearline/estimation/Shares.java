package club.yearline.estimation;

/** Running shares of a whole whose parts are given by their logarithms. */
final class Shares {

  private Shares() {}

  /** For each part, the share of it and all before it. */
  static double[] upTo(double[] logs) {
    double[] shares = new double[logs.length];
    LogSum sum = new LogSum();
    for (int i = 0; i < logs.length; i++) {
      shares[i] = sum.add(logs[i]).log();
    }
    return ofWhole(shares, sum.log());
  }

  /** For each part, the share of all after it. */
  static double[] above(double[] logs) {
    double[] shares = new double[logs.length];
    LogSum sum = new LogSum();
    for (int i = logs.length - 1; i >= 0; i--) {
      shares[i] = sum.log();
      sum.add(logs[i]);
    }
    return ofWhole(shares, sum.log());
  }

  private static double[] ofWhole(double[] logs, double whole) {
    for (int i = 0; i < logs.length; i++) {
      logs[i] = Math.min(1, Math.exp(logs[i] - whole));
    }
    return logs;
  }
}
