package club.yearline.api;

import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Records;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Questions about what an airframe may be, of every kind that a catalogue can answer. */
final class SpotQuestions {

  private SpotQuestions() {}

  /** Address, blank, body. */
  static Stream<String> of(Records records) {
    List<String> observed = records.features().stream().map(SpotQuestions::observation).toList();
    return Stream.of(
            Stream.of("{}", "{\"limit\": 1, \"visibility\": \"ramp\"}"),
            records.families().stream().map(f -> "{\"family\": \"" + f.key() + "\"}"),
            records.families().stream()
                .map(
                    f ->
                        "{\"family\": \""
                            + f.key()
                            + "\", \"visibility\": \"cabin\", "
                            + observations(observed)
                            + "}"),
            observed.stream().map(o -> "{" + observations(List.of(o)) + ", \"limit\": 3}"),
            records.features().stream().map(f -> "{\"skip\": [\"" + f.key() + "\"]}"))
        .flatMap(bodies -> bodies)
        .map(body -> "/spot " + body);
  }

  private static String observations(List<String> observed) {
    return "\"observations\": " + observed.stream().collect(Collectors.joining(", ", "[", "]"));
  }

  private static String observation(Feature feature) {
    String value = feature.isNumber() ? "145.5" : "\"" + feature.values().get(0).key() + "\"";
    return "{\"feature\": \"" + feature.key() + "\", \"value\": " + value + "}";
  }
}
