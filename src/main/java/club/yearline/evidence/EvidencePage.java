package club.yearline.evidence;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the airframes of the register say about a change.
 *
 * @param title the change
 * @param change key of the change
 * @param href its page
 * @param plots one for each variant and series in which it cut in
 */
record EvidencePage(String title, String change, String href, List<Plot> plots) {

  /**
   * One variant.
   *
   * @param id unique within the page
   * @param variant key of the variant
   * @param name its designation, with the series where it has several
   * @param series key of the series
   * @param record the recorded cut-in in words
   * @param lo the lowest candidate, as typed or recorded
   * @param hi the highest candidate
   * @param own whether the reader asks with bounds of their own
   * @param faults what is wrong with them, by field
   * @param weighed what comes of it; null where there is nothing to weigh
   */
  record Plot(
      String id,
      String variant,
      String name,
      String series,
      String record,
      String lo,
      String hi,
      boolean own,
      Map<String, String> faults,
      @Nullable Findings weighed) {}

  /**
   * What comes of weighing.
   *
   * @param headline how many airframes, and where it cut in
   * @param models how probable either model is
   * @param notes what else is to be said: what does not count, what is not shown
   * @param chart the drawing; null without airframes
   * @param rows the airframes
   * @param more how many there are beyond the rows
   * @param proposable whether a correction may be begun from it
   * @param window the window that it would propose
   */
  record Findings(
      String headline,
      @Nullable String models,
      List<String> notes,
      @Nullable EvidenceChart chart,
      List<Row> rows,
      @Nullable String more,
      boolean proposable,
      String window) {}

  /**
   * One airframe.
   *
   * @param serial its serial, or among which it stands
   * @param shows old or new
   * @param on the day; empty where the serial is not shown
   * @param doubt why it may be an exchanged part; empty without
   */
  record Row(String serial, String shows, String on, String doubt) {}
}
