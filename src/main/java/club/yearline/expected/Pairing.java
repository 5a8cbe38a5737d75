package club.yearline.expected;

import java.util.List;

/**
 * Two variant-years side by side, as shown.
 *
 * @param from heading of the first
 * @param fromHref its expected configuration
 * @param to heading of the second
 * @param toHref its expected configuration
 * @param swapHref the same, the other way round
 * @param compareHref their figures side by side
 * @param summary how many differ and how many are the same
 * @param differing the features that differ
 * @param same the features that do not
 * @param sameTitle what the list of those is called
 */
public record Pairing(
    String from,
    String fromHref,
    String to,
    String toHref,
    String swapHref,
    String compareHref,
    String summary,
    List<Pair> differing,
    List<Pair> same,
    String sameTitle) {

  /** A feature with its answer on each side; for the same answers, the first side's. */
  public record Pair(String name, String href, String chapter, Cell from, Cell to) {}

  /**
   * One side's answer.
   *
   * @param mark classes of the state's mark; empty where the feature does not belong to the variant
   * @param word the state in words
   * @param lines what is possible, or the stretches
   */
  public record Cell(String mark, String word, List<Row.Line> lines) {}
}
