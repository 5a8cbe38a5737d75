package club.yearline.api;

import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureValue;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.Records;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.Variant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Inspections of every variant, with every value seen at least once. */
final class InspectQuestions {

  private InspectQuestions() {}

  /** Address, blank, body. */
  static Stream<String> of(Records records) {
    List<String> bodies = new ArrayList<>();
    int most = records.features().stream().mapToInt(f -> values(records, f).size()).max().orElse(0);
    List<Variant> produced = records.variants().stream().filter(v -> !v.runs().isEmpty()).toList();
    for (Variant variant : produced) {
      String claim =
          "\"variant\": \"%s\", \"year\": %d"
              .formatted(variant.key(), variant.runs().get(0).firstYear());
      bodies.add("{" + claim + "}");
      for (int i = 0; i < most; i++) {
        bodies.add("{" + claim + ", " + observations(records, i) + "}");
      }
    }
    for (SerialBlock block : records.blocks().stream().limit(10).toList()) {
      bodies.add(
          "{\"serial\": \"%s\", \"variant\": \"%s\", %s}"
              .formatted(block.firstSerial(), block.variant(), observations(records, 0)));
    }
    return bodies.stream().map(body -> "/inspect " + body);
  }

  private static String observations(Records records, int index) {
    return records.features().stream()
        .map(f -> observation(f, values(records, f), index))
        .collect(Collectors.joining(", ", "\"observations\": [", "]"));
  }

  private static String observation(Feature feature, List<String> values, int index) {
    String value = values.get(index % values.size());
    return "{\"feature\": \"%s\", \"value\": %s}"
        .formatted(feature.key(), feature.isNumber() ? value : "\"" + value + "\"");
  }

  private static List<String> values(Records records, Feature feature) {
    return feature.isNumber()
        ? Stream.concat(
                Stream.of("777.5"),
                records.changes().stream()
                    .filter(c -> c.feature().equals(feature.key()))
                    .flatMap(c -> c.offering().stream())
                    .map(Offered::value)
                    .filter(v -> !v.startsWith("+") && !v.startsWith("0")))
            .distinct()
            .toList()
        : feature.values().stream().map(FeatureValue::key).toList();
  }
}
