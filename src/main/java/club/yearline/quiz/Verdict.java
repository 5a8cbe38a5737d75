package club.yearline.quiz;

/** What the records make of a claim. */
enum Verdict {
  /** They prove it. */
  HOLDS,
  /** They prove the contrary. */
  FAILS,
  /** Neither: disputed, open, not recorded, without a source, or a matter of the airframe. */
  UNPROVEN;

  static Verdict of(boolean holds) {
    return holds ? HOLDS : FAILS;
  }

  /** What the records make of this claim and another one together. */
  Verdict and(Verdict other) {
    if (this == FAILS || other == FAILS) {
      return FAILS;
    }
    return this == HOLDS && other == HOLDS ? HOLDS : UNPROVEN;
  }
}
