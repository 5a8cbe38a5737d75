package club.yearline.estimation;

import club.yearline.effectivity.Serial;
import club.yearline.testing.Dice;
import java.util.ArrayList;
import java.util.List;

/** Airframes for tests of estimates. */
final class Samples {

  private Samples() {}

  static Sighting old(long ordinal) {
    return old(ordinal, 0.05);
  }

  static Sighting young(long ordinal) {
    return young(ordinal, 0.05);
  }

  static Sighting old(long ordinal, double exchange) {
    return new Sighting("old-" + ordinal, Serial.of(ordinal), false, exchange);
  }

  static Sighting young(long ordinal, double exchange) {
    return new Sighting("new-" + ordinal, Serial.of(ordinal), true, exchange);
  }

  static Estimate estimate(long lo, long hi, Sighting... sightings) {
    return Estimate.of(new Bounds(lo, hi), List.of(sightings));
  }

  /** Up to a dozen airframes in and around 3 to 17, of one exchange chance or two. */
  static List<Sighting> few(Dice dice) {
    double usual = dice.pick(0.001, 0.01, 0.05, 0.2);
    List<Sighting> few = new ArrayList<>();
    int count = dice.between(0, 12);
    for (int i = 0; i < count; i++) {
      few.add(
          new Sighting(
              "a-" + i,
              new Serial(dice.between(0, 20), dice.chance(0.1) ? 'A' : Serial.NO_SUFFIX),
              dice.chance(0.5),
              dice.chance(0.2) ? 0.1 : usual));
    }
    return few;
  }
}
