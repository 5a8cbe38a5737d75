package club.yearline.browse;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One change record as its page shows it.
 *
 * @param title one line
 * @param detail plain text
 * @param feature the feature that changes
 * @param offering the values available new from it on
 * @param cutIns where it takes effect
 * @param citations sources for and against
 * @param grade code of the best grade among those in favour
 * @param disputed whether a source speaks against it
 * @param findings what is doubtful about it
 * @param versions what its record said over time, newest first
 * @param observed address of what airframes say about where it cut in; null where it did not cut in
 *     during any variant's production
 */
record ChangePage(
    String title,
    @Nullable String detail,
    PageLink feature,
    List<OfferedRow> offering,
    List<CutInRow> cutIns,
    List<CitationLine> citations,
    String grade,
    boolean disputed,
    List<FindingLine> findings,
    List<VersionItem> versions,
    @Nullable String observed) {

  /** The name of a page and its address. */
  record PageLink(String name, String href) {}

  /**
   * One value offered.
   *
   * @param value the value in words, with its take rate
   * @param fit code of the fit
   */
  record OfferedRow(String value, String fit) {}

  /**
   * Where the change takes effect in one variant.
   *
   * @param variant the variant
   * @param words the cut-in in words
   * @param years the window on the year axis as recorded; empty without
   * @param serials the window on the serial axis as recorded; empty without
   * @param before the change before it in the variant's order
   * @param after the change after it
   */
  record CutInRow(
      PageLink variant,
      String words,
      String years,
      String serials,
      @Nullable PageLink before,
      @Nullable PageLink after) {}

  /**
   * One version of the record.
   *
   * @param since the revision that brought it
   * @param until the first revision without it; null where the newest has it
   * @param differences what it changed in the version before it; empty for the first
   * @param first whether it is the first version
   */
  record VersionItem(
      PageLink since, @Nullable PageLink until, List<FieldDifference> differences, boolean first) {}
}
