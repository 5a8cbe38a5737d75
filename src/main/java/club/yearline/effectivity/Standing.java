package club.yearline.effectivity;

/** How a change stands to a position. */
enum Standing {
  /** Not yet: the change has no effect there. */
  BEFORE,
  /** In the window: old or new. */
  INSIDE,
  /** The records do not tell on which side of the window the position lies. */
  OPEN,
  /** Certainly new. */
  AFTER
}
