package club.yearline.browse;

import club.yearline.web.Pages;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What lies between two revisions: the edits, and the answers that changed with them.
 *
 * @param edits edits by kind of entry
 * @param first whether there was nothing before, so that every answer is new
 * @param impact changed answers by variant
 * @param redrawn timelines of the features whose answers changed
 * @param only the one variant shown; null where all are
 * @param pages pages of the one variant's rows; null where all are shown
 */
record DifferencePage(
    List<KindEdits> edits,
    boolean first,
    List<ImpactGroup> impact,
    Redrawn redrawn,
    @Nullable String only,
    @Nullable Pages pages) {

  /**
   * Edits of one kind of entry.
   *
   * @param kind message key of the kind
   * @param counts how many were added, changed, withdrawn, in words
   * @param edits those shown
   * @param hidden how many more there are
   */
  record KindEdits(String kind, String counts, List<EditItem> edits, int hidden) {}

  /**
   * One edit.
   *
   * @param name name of the entry
   * @param href its page; null where the entry is gone
   * @param what code of what was done: added, changed, withdrawn
   * @param differences what reads differently; empty for an entry added or withdrawn
   */
  record EditItem(
      String name, @Nullable String href, String what, List<FieldDifference> differences) {}

  /**
   * Changed answers of one variant.
   *
   * @param variant designation
   * @param counts how many of which kind, in words
   * @param lines those shown
   * @param hidden how many more there are
   * @param all where all are shown
   */
  record ImpactGroup(
      String variant, String counts, List<ImpactLine> lines, int hidden, String all) {}

  /**
   * One changed answer.
   *
   * @param kind code of the way in which it differs
   * @param feature name of the feature
   * @param href page of the feature; null where it is gone
   * @param place years and serials
   * @param airframes how many airframes; empty where blocks do not tell
   * @param before the answer before
   * @param after the answer after
   */
  record ImpactLine(
      String kind,
      String feature,
      @Nullable String href,
      String place,
      String airframes,
      Outcome before,
      Outcome after) {}

  /**
   * One side of a changed answer.
   *
   * @param state code of its state; null where there was no answer
   * @param words the answer in words
   */
  record Outcome(@Nullable String state, String words) {}
}
