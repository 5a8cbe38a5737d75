package club.yearline.effectivity;

/** How readily a part is exchanged in service. */
public enum Exchange {
  BUILT_IN(0.001),
  MAJOR_WORK(0.01),
  BOLT_ON(0.05),
  OFTEN_CHANGED(0.20);

  private final String code = Codes.of(this);

  private final double chance;

  Exchange(double chance) {
    this.chance = chance;
  }

  /** Chance (0 to 1) that the part now seen is not the one that left the factory. */
  public double chance() {
    return chance;
  }

  /** The word used in files, addresses and the API. */
  public String code() {
    return code;
  }
}
