package club.yearline.compare;

import java.util.Collection;
import java.util.Locale;

/** Whether something can be done. */
enum Outcome {
  CAN,
  /** Some of the airframes can: it depends on the serial, an option or a transition. */
  DEPENDS,
  CANNOT,
  /** A figure is missing that would tell. */
  UNTOLD;

  /** The end of its message's key, and of its mark's class. */
  String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** For one airframe: all must be possible; what is certain not to be decides. */
  static Outcome all(Collection<Outcome> outcomes) {
    for (Outcome decisive : new Outcome[] {CANNOT, UNTOLD, DEPENDS}) {
      if (outcomes.contains(decisive)) {
        return decisive;
      }
    }
    return CAN;
  }

  /** For several airframes: what all have in common. */
  static Outcome common(Collection<Outcome> outcomes) {
    if (outcomes.stream().distinct().count() == 1) {
      return outcomes.iterator().next();
    }
    return outcomes.contains(UNTOLD) ? UNTOLD : DEPENDS;
  }
}
