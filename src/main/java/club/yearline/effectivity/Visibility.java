package club.yearline.effectivity;

/** From where a feature can be seen; each place includes those declared before it. */
public enum Visibility {
  RAMP,
  CLOSE,
  CABIN,
  OPENED,
  PAPERS;

  private final String code = Codes.of(this);

  /** Whether somebody who stands at the given place can see the feature. */
  public boolean seenFrom(Visibility place) {
    return compareTo(place) <= 0;
  }

  /** The word used in files, addresses and the API. */
  public String code() {
    return code;
  }
}
