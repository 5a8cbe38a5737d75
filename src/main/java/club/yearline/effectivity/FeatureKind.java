package club.yearline.effectivity;

/** Whether a feature's values are choices with names, or numbers with a unit. */
public enum FeatureKind {
  CHOICE,
  NUMBER;

  private final String code = Codes.of(this);

  /** The word used in files, addresses and the API. */
  public String code() {
    return code;
  }
}
