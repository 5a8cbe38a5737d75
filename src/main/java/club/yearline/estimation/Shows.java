package club.yearline.estimation;

/** What a value says about a change. */
public enum Shows {
  /** It was offered before the change only. */
  OLD,
  /** It was offered from the change on only. */
  NEW,
  /** It was offered before and after, so that it tells nothing. */
  BOTH,
  /** It was offered neither before nor after. */
  NEITHER
}
