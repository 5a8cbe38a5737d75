package club.yearline.api;

import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Records;
import club.yearline.effectivity.Series;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Questions for cut-ins: every one of a catalogue, with and without observations. */
final class CutInQuestions {

  private CutInQuestions() {}

  /** Address, blank, body. */
  static Stream<String> of(Records records) {
    return records.changes().stream()
        .flatMap(change -> change.cutIns().stream().flatMap(c -> of(records, change, c)))
        .map(body -> "/cut-in " + body);
  }

  private static Stream<String> of(Records records, Change change, CutIn cutIn) {
    String start =
        "{\"change\": \"" + change.key() + "\", \"variant\": \"" + cutIn.variant() + "\"";
    List<String> serials = serials(records, cutIn);
    String bounds =
        serials.isEmpty()
            ? ""
            : ", \"series\": \""
                + cutIn.series()
                + "\", \"lo\": \""
                + serials.get(0)
                + "\", \"hi\": \""
                + serials.get(serials.size() - 1)
                + "\"";
    return Stream.of(
        start + "}",
        start + bounds + ", \"observations\": [" + observations(serials) + "]}",
        start + bounds + ", \"observations\": [" + others(serials, change) + "]}",
        start + belowBounds(serials, cutIn) + "}");
  }

  /** A new one below the lowest candidate: an exchanged part for certain. */
  private static String belowBounds(List<String> serials, CutIn cutIn) {
    return serials.isEmpty()
        ? ""
        : ", \"series\": \""
            + cutIn.series()
            + "\", \"lo\": \""
            + serials.get(2)
            + "\", \"hi\": \""
            + serials.get(6)
            + "\", \"observations\": ["
            + observation(serials.get(0), "new")
            + "]";
  }

  /** Some serials of the cut-in's series. */
  private static List<String> serials(Records records, CutIn cutIn) {
    return records.series().stream()
        .filter(s -> s.key().equals(cutIn.series()))
        .flatMap(s -> IntStream.of(1, 20, 300, 400, 700, 800, 1500).mapToObj(i -> serial(s, i)))
        .toList();
  }

  private static String serial(Series series, int ordinal) {
    return (series.prefix() == null ? "" : series.prefix()) + ordinal;
  }

  /** New ones below old ones, and one airframe twice. */
  private static String observations(List<String> serials) {
    return IntStream.range(0, serials.size())
        .mapToObj(i -> observation(serials.get(i % 5), i % 3 == 0 ? "new" : "old"))
        .reduce((a, b) -> a + ", " + b)
        .orElse("");
  }

  private static String others(List<String> serials, Change change) {
    return serials.isEmpty() ? "" : observation(serials.get(0), change.offering().get(0).value());
  }

  private static String observation(String serial, String value) {
    return "{\"serial\": \"" + serial + "\", \"value\": \"" + value + "\"}";
  }
}
