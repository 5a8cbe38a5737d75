package club.yearline.spotting;

import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Values;
import java.util.Optional;

/**
 * A value seen on an airframe. Immutable.
 *
 * @param feature the feature looked at
 * @param value a value key of the feature, or a number in its unit in the one form in which equal
 *     numbers are equal texts
 */
public record Seen(Feature feature, String value) {

  /**
   * Holds what was seen.
   *
   * @throws IllegalArgumentException if the value is not one the feature can have
   */
  public Seen {
    if (feature.isNumber() ? Values.number(value).isEmpty() : feature.value(value).isEmpty()) {
      throw new IllegalArgumentException("'" + value + "' is no value of feature " + feature.key());
    }
    value = text(feature, value);
  }

  /** Reads what was typed; empty where the feature cannot have such a value. */
  public static Optional<Seen> read(Feature feature, String typed) {
    String value = typed.strip();
    boolean known =
        feature.isNumber() ? Values.number(value).isPresent() : feature.value(value).isPresent();
    return known ? Optional.of(new Seen(feature, value)) : Optional.empty();
  }

  /** The text by which equal values of a feature are equal. */
  static String text(Feature feature, String recorded) {
    return feature.isNumber() ? Values.canonical(recorded) : recorded;
  }

  /** Feature and value as addresses carry them: {@code door-latch:rotary}. */
  public String code() {
    return feature.key() + ":" + value;
  }
}
