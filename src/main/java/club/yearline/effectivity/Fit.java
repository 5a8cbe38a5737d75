package club.yearline.effectivity;

/** How a value was offered on a new airframe. */
public enum Fit {
  STANDARD,
  OPTION;

  /** The word used in files, addresses and the API. */
  public String code() {
    return Codes.of(this);
  }
}
