package club.yearline.evidence;

import club.yearline.effectivity.Change;
import club.yearline.effectivity.Serial;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.Variant;
import club.yearline.estimation.Bounds;
import club.yearline.estimation.CutInQuestion;
import club.yearline.estimation.Estimate;
import club.yearline.estimation.Gathered;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A change's cut-in in one variant, weighed by the airframes of the register.
 *
 * @param airframes those that count, by serial
 * @param gathered the same as the estimate knows them, and what does not count
 */
record Weighed(
    Change change,
    Variant variant,
    CutInQuestion question,
    List<Stood> airframes,
    Gathered gathered,
    Estimate estimate) {

  Weighed {
    airframes = List.copyOf(airframes);
  }

  /**
   * An airframe of the register that counts.
   *
   * @param observation number of the observation
   * @param airframe what tells it apart in the estimate
   * @param serial where it truly stands; never to be shown unless {@code named}
   * @param band where it may be said to stand: the serial alone where it is named
   * @param agreed whether its owner agreed that its serial is shown
   * @param named whether its serial is shown here
   * @param isNew whether it showed the new value
   * @param on the day
   */
  record Stood(
      long observation,
      String airframe,
      Serial serial,
      Bounds band,
      boolean agreed,
      boolean named,
      boolean isNew,
      LocalDate on) {}

  Series series() {
    return question.series();
  }

  String show(long ordinal) {
    return series().show(Serial.of(ordinal));
  }

  /** The last day on which one of the airframes was looked at. */
  Optional<LocalDate> latest() {
    return airframes.stream().map(Stood::on).max(LocalDate::compareTo);
  }

  /** Whether a transition is likelier than a cut-in at one serial. */
  boolean isTransition() {
    return estimate.windowChance() > 0.5;
  }

  /**
   * From the first serial that may be new to the one from which all are: all of the 95 % of a
   * cut-in at one serial, or the most probable window, whichever model is likelier.
   */
  Bounds window() {
    if (isTransition()) {
      return estimate
          .window()
          .map(w -> new Bounds(w.first().first(), w.settled().last()))
          .orElse(estimate.candidates());
    }
    List<Bounds> credible = estimate.credible();
    return new Bounds(credible.get(0).first(), credible.get(credible.size() - 1).last());
  }

  /** Whether the window says more than the record does. */
  boolean narrows() {
    long lowest = question.lowest().orElse(0);
    long highest = question.highest().orElse(Serial.MAX_ORDINAL + 1);
    Bounds window = window();
    return !airframes.isEmpty()
        && lowest <= window.first()
        && window.last() <= highest
        && (lowest < window.first() || window.last() < highest);
  }
}
