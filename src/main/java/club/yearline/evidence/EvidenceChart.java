package club.yearline.evidence;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The geometry of an evidence plot: serials across; above them the airframes that showed the new
 * value, below these the old ones, below these how the chance of the new one grows.
 *
 * @param id unique within the page
 * @param marks the airframes, as one path for each kind of mark
 * @param bands the stretches that hold the cut-in
 * @param growth the curve
 * @param recorded the recorded window
 * @param rings around suspected exchanged parts
 * @param notes texts
 * @param ticks serials on the axis
 */
record EvidenceChart(
    String id,
    double width,
    double height,
    List<Mark> marks,
    List<Strip> bands,
    String growth,
    String recorded,
    List<Ring> rings,
    List<Note> notes,
    List<Stamp> ticks) {

  /** Marks of a kind. */
  record Mark(String kind, String path) {}

  /** A stretch over the whole height. */
  record Strip(double x, double width) {}

  /** A ring, with a word where there is room for it. */
  record Ring(double x, double y, @Nullable Note word) {}

  /** A text at a place. */
  record Note(double x, double y, String anchor, String text) {}

  /** A serial on the axis. */
  record Stamp(double x, String text) {}
}
