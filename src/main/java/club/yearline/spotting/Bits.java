package club.yearline.spotting;

/** Entropy, counted in bits. */
final class Bits {

  private static final double LN_2 = Math.log(2);

  private Bits() {}

  /** What an outcome of the given chance (0 to 1) adds to an entropy: {@code -p log2 p}. */
  static double of(double chance) {
    return chance <= 0 ? 0 : -chance * Math.log(chance) / LN_2;
  }
}
