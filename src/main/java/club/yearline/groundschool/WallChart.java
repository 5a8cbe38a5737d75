package club.yearline.groundschool;

import club.yearline.web.Tick;
import java.util.List;

/**
 * The geometry of a wall chart: years across, for each variant its production and, below it, its
 * changes where they cut in. Black on white, told apart by shape alone.
 *
 * @param title the family
 * @param note what was drawn: revision, day, address
 * @param width width of the drawing
 * @param height height of the drawing
 * @param foot where the years end and the key begins
 * @param ticks the years
 * @param rows the variants
 */
record WallChart(
    String title,
    String note,
    double width,
    double height,
    double foot,
    List<Tick> ticks,
    List<Row> rows) {

  /** One variant: its name, its runs and its changes. */
  record Row(String name, double y, double x, List<Run> runs, List<Mark> marks) {

    /** The same row, further down. */
    Row down(double by) {
      return new Row(
          name,
          y + by,
          x,
          runs.stream().map(r -> r.down(by)).toList(),
          marks.stream().map(m -> m.down(by)).toList());
    }
  }

  /** A production run. */
  record Run(double x, double y, double width, double height) {

    Run down(double by) {
      return new Run(x, y + by, width, height);
    }
  }

  /**
   * A change of a variant.
   *
   * @param kind clean, window, open or option
   * @param x where it begins
   * @param y middle of its line
   * @param width length of its window; 0 for a clean cut-in
   * @param textX where its words begin or, on the left of the sign, end
   * @param left whether its words stand on the left
   */
  record Mark(
      String kind, double x, double y, double width, double textX, boolean left, String text) {

    Mark down(double by) {
      return new Mark(kind, x, y + by, width, textX, left, text);
    }
  }
}
