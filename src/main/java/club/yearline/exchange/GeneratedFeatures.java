package club.yearline.exchange;

import club.yearline.effectivity.Exchange;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureKind;
import club.yearline.effectivity.FeatureValue;
import club.yearline.effectivity.Visibility;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** Invents the features that all generated families share: 48 choices and 12 numbers. */
final class GeneratedFeatures {

  private static final List<String> PARTS =
      List.of(
          "Landing light:33",
          "Door latch:52",
          "Rear window:56",
          "Wing tip:57",
          "Cowl flap:71",
          "Panel shroud:31",
          "Fuel cap:28",
          "Flap lever:27",
          "Nose strut:32",
          "Exhaust stack:78",
          "Fin fairing:55",
          "Cabin vent:21",
          "Seat frame:25",
          "Aerial mount:23",
          "Pitot head:34",
          "Spinner dome:61");

  private static final List<String> ASPECTS = List.of("finish", "place", "shape");

  /** Key, unit and chapter of a number. */
  private static final List<String> NUMBERS =
      List.of(
          "power:hp:71",
          "gross-weight:lb:08",
          "standard-empty-weight:lb:08",
          "usable-fuel:gal:28",
          "cruise-speed:kt:02",
          "cruise-fuel-flow:gal/h:73",
          "wing-area:ft2:57",
          "wing-span:ft:57",
          "stall-speed:kt:02",
          "climb-rate:ft/min:02",
          "baggage-limit:lb:25",
          "seats:count:25");

  private static final int MOST_VALUES = 4;

  private final Random random;

  GeneratedFeatures(long seed) {
    this.random = new Random(seed);
  }

  List<Feature> make() {
    List<Feature> features = new ArrayList<>();
    for (String part : PARTS) {
      String[] words = part.split(":");
      ASPECTS.forEach(aspect -> features.add(choice(words[0], aspect, words[1])));
    }
    NUMBERS.forEach(number -> features.add(number(number.split(":"))));
    return features;
  }

  private Feature choice(String part, String aspect, String chapter) {
    List<FeatureValue> values = new ArrayList<>();
    for (int i = 0; i < MOST_VALUES - random.nextInt(2); i++) {
      char letter = (char) ('a' + i);
      String label = aspect + " " + Character.toUpperCase(letter);
      values.add(
          new FeatureValue(aspect + "-" + letter, label, "Compare the drawing.", null, null));
    }
    String key = (part + "-" + aspect).toLowerCase(Locale.ROOT).replace(' ', '-');
    String name = part + ", " + aspect;
    return feature(key, name, chapter, FeatureKind.CHOICE, null, values);
  }

  private Feature number(String[] words) {
    String name = words[0].replace('-', ' ');
    return feature(words[0], name, words[2], FeatureKind.NUMBER, words[1], List.of());
  }

  private Feature feature(
      String key,
      String name,
      String chapter,
      FeatureKind kind,
      @Nullable String unit,
      List<FeatureValue> values) {
    return new Feature(
        key,
        name,
        chapter,
        kind,
        unit,
        any(Visibility.values()),
        any(Exchange.values()),
        null,
        values,
        List.of());
  }

  private <T> T any(T[] all) {
    return all[random.nextInt(all.length)];
  }
}
