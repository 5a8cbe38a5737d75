package club.yearline.effectivity;

/** On which side of an end of a cut-in a position lies. */
enum Side {
  BELOW,
  AT_OR_ABOVE,
  UNDECIDED;

  static Side of(boolean below) {
    return below ? BELOW : AT_OR_ABOVE;
  }

  /** This side, if the other is the same; undecided otherwise. */
  Side and(Side other) {
    return this == other ? this : UNDECIDED;
  }
}
