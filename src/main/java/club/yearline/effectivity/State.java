package club.yearline.effectivity;

/** What is known of a feature at a position. */
public enum State {
  /** One offering is possible. */
  SETTLED,
  /** Several are possible, because the position lies in a transition. */
  TRANSITION,
  /** Several are possible, because the records do not tell where a change cut in. */
  OPEN,
  /** Nothing is recorded. */
  UNRECORDED,
  /** The year's serials have different answers. */
  SPLITS;

  private final String code = Codes.of(this);

  /** The word used in files, addresses and the API. */
  public String code() {
    return code;
  }
}
