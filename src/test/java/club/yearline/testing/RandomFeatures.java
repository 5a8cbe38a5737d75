package club.yearline.testing;

import club.yearline.effectivity.Exchange;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureKind;
import club.yearline.effectivity.FeatureValue;
import club.yearline.effectivity.Visibility;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** Random features: choices with two to four values, and numbers. */
final class RandomFeatures {

  /** Numbers as recorded; some equal by value though not by text. */
  static final List<String> NUMBERS = List.of("120", "120.0", "145", "0", "0.50", "-3");

  private final Dice dice;
  private final Evidence evidence;
  private final UnaryOperator<String> picture;

  RandomFeatures(Dice dice, Evidence evidence, UnaryOperator<String> picture) {
    this.dice = dice;
    this.evidence = evidence;
    this.picture = picture;
  }

  List<Feature> make() {
    List<Feature> features = new ArrayList<>();
    int count = dice.between(2, 5);
    for (int i = 0; i < count; i++) {
      features.add(feature("feature-" + i, dice.chance(0.3)));
    }
    return features;
  }

  private Feature feature(String key, boolean number) {
    return new Feature(
        key,
        "Name of " + key,
        dice.pick("33", "52", "71"),
        number ? FeatureKind.NUMBER : FeatureKind.CHOICE,
        number ? dice.pick("hp", "lb", "kt", "count") : null,
        dice.pick(Visibility.values()),
        dice.pick(Exchange.values()),
        evidence.text(),
        number ? List.of() : values(key),
        evidence.citations(null));
  }

  private List<FeatureValue> values(String feature) {
    List<FeatureValue> values = new ArrayList<>();
    int count = dice.between(2, 4);
    for (int i = 0; i < count; i++) {
      boolean drawn = dice.chance(0.2);
      values.add(
          new FeatureValue(
              "value-" + i,
              "Label " + i,
              evidence.text(),
              drawn ? picture.apply(feature + "-" + i) : null,
              drawn ? dice.maybe(0.5, "Drawn for the test, CC0") : null));
    }
    return values;
  }
}
