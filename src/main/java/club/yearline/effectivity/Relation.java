package club.yearline.effectivity;

/** How two variants of a family relate. */
public enum Relation {
  DEVELOPED_INTO,
  REPLACED_BY,
  BESIDE;

  private final String code = Codes.of(this);

  /** The word used in files, addresses and the API. */
  public String code() {
    return code;
  }
}
