package club.yearline.spotting;

import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureValue;
import club.yearline.effectivity.Timeline;
import club.yearline.effectivity.Values;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The values that a feature can show among the pairs considered, in their order. */
final class SeenValues {

  private final List<String> values;
  private final Map<String, Integer> indexes = new HashMap<>();

  private SeenValues(List<String> values) {
    this.values = values;
    for (int i = 0; i < values.size(); i++) {
      indexes.put(values.get(i), i);
    }
  }

  /**
   * A choice's recorded values; for a figure the distinct numbers that changes offer, and retrofits
   * bring, in the variants considered.
   */
  static SeenValues of(Feature feature, Collection<Timeline> timelines) {
    return new SeenValues(
        feature.isNumber()
            ? timelines.stream().flatMap(SeenValues::numbers).distinct().sorted(BY_SIZE).toList()
            : feature.values().stream().map(FeatureValue::key).toList());
  }

  private static final Comparator<String> BY_SIZE =
      Comparator.comparing(text -> Values.number(text).orElseThrow());

  private static Stream<String> numbers(Timeline timeline) {
    return Stream.concat(
            timeline.changes().stream().flatMap(c -> c.offering().stream()).map(o -> o.value()),
            timeline.retrofits().stream().map(r -> r.value()))
        .filter(text -> Values.number(text).isPresent())
        .map(Values::canonical);
  }

  int size() {
    return values.size();
  }

  String at(int index) {
    return values.get(index);
  }

  List<String> all() {
    return values;
  }

  /** The index of a value; -1 where it is none of these. */
  int index(String value) {
    return indexes.getOrDefault(value, -1);
  }
}
