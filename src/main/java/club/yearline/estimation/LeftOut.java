package club.yearline.estimation;

/** Why an observation does not count. */
public enum LeftOut {
  /** A later one of the same airframe counts. */
  SUPERSEDED,
  /** Nobody recorded the airframe's serial. */
  NO_SERIAL,
  /** The airframe's serial is of another series. */
  OTHER_SERIES,
  /** The value was offered before the change and after it. */
  BOTH,
  /** The value was offered neither before the change nor after it. */
  NEITHER
}
