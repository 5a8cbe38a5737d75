package club.yearline.effectivity;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One feature at two positions.
 *
 * @param feature the feature
 * @param from the answer at the first position; null where the feature does not belong to its
 *     variant
 * @param to the answer at the second position; null likewise
 */
public record Difference(Feature feature, @Nullable Answer from, @Nullable Answer to) {

  /** Whether a reader would call the two answers different. */
  public boolean differs() {
    return from == null || to == null ? from != to : from.differsFrom(to);
  }

  /**
   * Pairs two expected configurations, feature by feature: those of the first position in its
   * order, then those that only the second has.
   */
  public static List<Difference> pair(List<Answer> from, List<Answer> to) {
    Map<String, Answer> second = new LinkedHashMap<>();
    to.forEach(a -> second.put(a.feature().key(), a));
    List<Difference> pairs = new ArrayList<>();
    for (Answer answer : from) {
      pairs.add(new Difference(answer.feature(), answer, second.remove(answer.feature().key())));
    }
    second.values().forEach(a -> pairs.add(new Difference(a.feature(), null, a)));
    return pairs;
  }
}
