package club.yearline.expected;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The expected configuration of one position, as shown.
 *
 * @param heading what was asked, stamped
 * @param names names it was sold under then; null where none is recorded
 * @param stamps the data plate's fields
 * @param notices what is to be known before reading on
 * @param tallies how many features are in which state
 * @param neighbours what differed in the nearest years
 * @param groups the features, by chapter or in the order of a walk-around
 * @param walk whether the order is that of a walk-around
 * @param chapterHref this page by chapter
 * @param walkHref this page in the order of a walk-around
 */
public record Sheet(
    String heading,
    @Nullable String names,
    List<Stamp> stamps,
    List<String> notices,
    List<Tally> tallies,
    List<Neighbour> neighbours,
    List<Group> groups,
    boolean walk,
    String chapterHref,
    String walkHref) {

  /** A field of the data plate; the address is null where it leads nowhere. */
  public record Stamp(String name, String text, @Nullable String href) {}

  /**
   * How many features are in a state.
   *
   * @param mark classes of the state's mark
   * @param text the number and the state in words
   * @param closer the features to look at more closely; empty for those that are settled
   */
  public record Tally(String mark, String text, List<Shift> closer) {}

  /**
   * What differs in a neighbouring year.
   *
   * @param heading which year
   * @param href the two years side by side
   * @param shifts each feature that differs
   */
  public record Neighbour(String heading, String href, List<Shift> shifts) {}

  /** A feature, where it stands on the page, and what is said of it. */
  public record Shift(String name, String href, @Nullable String text) {}

  /** Features that belong together, and the address of their place on the page. */
  public record Group(String id, String href, String code, String title, List<Row> rows) {

    Group with(List<Row> others) {
      return new Group(id, href, code, title, others);
    }
  }
}
