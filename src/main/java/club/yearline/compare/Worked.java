package club.yearline.compare;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Something worked out, with the way to it.
 *
 * @param steps the lines of arithmetic, in order; empty where a figure is missing
 * @param result what comes out; null where a figure is missing
 * @param missing the figures that are missing
 */
record Worked(List<Step> steps, @Nullable Interval result, List<Figure> missing) {

  Worked {
    steps = List.copyOf(steps);
    missing = List.copyOf(missing);
  }

  static Worked without(List<Figure> missing) {
    return new Worked(List.of(), null, missing);
  }

  /** The result of the last of the steps. */
  static Worked of(List<Step> steps) {
    return new Worked(steps, steps.get(steps.size() - 1).result(), List.of());
  }

  /** The result; empty where a figure is missing. */
  Optional<Interval> found() {
    return Optional.ofNullable(result);
  }
}
