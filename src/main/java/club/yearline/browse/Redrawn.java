package club.yearline.browse;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Timelines before and after, as pages that compare two states draw them.
 *
 * @param pairs the features drawn
 * @param named further features whose answers changed, the first of them
 * @param more how many there are beyond those named
 */
record Redrawn(List<Pair> pairs, List<String> named, int more) {

  /** Nothing to draw. */
  static final Redrawn NONE = new Redrawn(List.of(), List.of(), 0);

  /**
   * One feature's timeline over the variants whose answers changed.
   *
   * @param feature the feature's name
   * @param before as it was; null where there was nothing to draw
   * @param after as it is; null where nothing is left to draw
   * @param hidden how many more variants changed
   */
  record Pair(
      String feature, @Nullable FeatureChart before, @Nullable FeatureChart after, int hidden) {

    /** One of the two, for what both share. */
    public FeatureChart either() {
      if (after != null) {
        return after;
      }
      if (before != null) {
        return before;
      }
      throw new IllegalStateException("Nothing is drawn of " + feature);
    }
  }
}
