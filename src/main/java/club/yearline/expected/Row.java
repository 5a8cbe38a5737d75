package club.yearline.expected;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One feature's answer as shown: flat and ready, so that the template only prints.
 *
 * @param id where the page can be jumped to
 * @param name the feature's name
 * @param href the feature's page
 * @param chapter its chapter's code
 * @param mark classes of the state's mark
 * @param word the state in words
 * @param split whether the lines are stretches of serials
 * @param lines what is possible, oldest first; or the stretches
 * @param proof what the answer rests on
 * @param fittings what may be installed later
 * @param neighbours what the year before and after had instead
 */
public record Row(
    String id,
    String name,
    String href,
    String chapter,
    String mark,
    String word,
    boolean split,
    List<Line> lines,
    Proof proof,
    List<Fitting> fittings,
    List<String> neighbours) {

  /**
   * One possibility, or one stretch of serials.
   *
   * @param lead the stretch; null for a possibility
   * @param mark classes of the stretch's mark; null for a possibility
   * @param word the stretch's state
   * @param items the values offered
   * @param note when it took effect or why it is not known; null where there is nothing to say
   */
  public record Line(
      @Nullable String lead,
      @Nullable String mark,
      @Nullable String word,
      List<Item> items,
      @Nullable String note) {}

  /**
   * One value offered.
   *
   * @param text its label, or number and unit
   * @param mark classes of the mark for standard or option; null for "nothing recorded"
   * @param fit standard or option, with the take rate
   * @param picture address of its picture
   * @param cue how to recognise it, where the row offers a choice
   */
  public record Item(
      String text,
      @Nullable String mark,
      @Nullable String fit,
      @Nullable String picture,
      @Nullable String cue) {}

  /**
   * What an answer rests on.
   *
   * @param mark classes of the grade's mark
   * @param grade the grade in words
   * @param disputed whether a source speaks against it
   * @param deciding the changes that decide it
   * @param cited the sources for and against
   */
  public record Proof(
      String mark, String grade, boolean disputed, List<Deciding> deciding, List<Cited> cited) {}

  /** A change that decides an answer. */
  public record Deciding(String title, String href, String when) {}

  /**
   * A citation.
   *
   * @param stance supports or disputes, in words
   * @param against whether it disputes
   * @param title the source's title
   * @param href the source's page
   * @param where locator and note; empty where neither is recorded
   */
  public record Cited(String stance, boolean against, String title, String href, String where) {}

  /**
   * A retrofit.
   *
   * @param value what may be installed
   * @param rest the approval or kit, and a note
   * @param mandatory whether a directive demands it
   * @param fits whether the position lies in its range
   * @param whom for which airframes, and whether for this one
   */
  public record Fitting(String value, String rest, boolean mandatory, boolean fits, String whom) {}
}
