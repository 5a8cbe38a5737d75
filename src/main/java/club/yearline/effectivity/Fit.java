package club.yearline.effectivity;

/** How a value was offered on a new airframe. */
public enum Fit {
  STANDARD,
  OPTION;

  private final String code = Codes.of(this);

  /** The word used in files, addresses and the API. */
  public String code() {
    return code;
  }
}
