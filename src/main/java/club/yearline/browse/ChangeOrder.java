package club.yearline.browse;

import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.YearSpan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** One order for the changes of a feature over several variants. */
final class ChangeOrder {

  private ChangeOrder() {}

  /**
   * Each change once, by the first year in which any variant may have it; changes of one year keep
   * the order that they have within the variants. Those that no year shows come last.
   */
  static List<Change> merged(List<Line> lines) {
    Map<String, Integer> firstYears = new HashMap<>();
    Set<Change> changes = new LinkedHashSet<>();
    for (Line line : lines) {
      changes.addAll(line.timeline().changes());
      line.spans().forEach(span -> note(span, firstYears));
    }
    List<Change> merged = new ArrayList<>(changes);
    merged.sort(Comparator.comparingInt(c -> firstYears.getOrDefault(c.key(), Integer.MAX_VALUE)));
    return List.copyOf(merged);
  }

  private static void note(YearSpan span, Map<String, Integer> firstYears) {
    Stream.concat(Stream.of(span.answer()), span.answer().stretches().stream().map(s -> s.answer()))
        .flatMap((Answer a) -> a.possible().stream())
        .filter(p -> p.change() != null)
        .forEach(p -> firstYears.merge(p.change().key(), span.firstYear(), Math::min));
  }
}
