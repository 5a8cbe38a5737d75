package club.yearline.effectivity;

/** Whether a feature's values are choices with names, or numbers with a unit. */
public enum FeatureKind {
  CHOICE,
  NUMBER;

  /** The word used in files, addresses and the API. */
  public String code() {
    return Codes.of(this);
  }
}
