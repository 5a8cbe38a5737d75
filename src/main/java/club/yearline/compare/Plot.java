package club.yearline.compare;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A drawing of bars, one for each variant-year, geometry ready.
 *
 * @param id unique within the page
 * @param title what is drawn
 * @param description what it shows, in a sentence
 * @param height of the drawing; it is {@value #WIDTH} wide
 * @param beams the bars
 */
public record Plot(String id, String title, String description, double height, List<Beam> beams) {

  static final double WIDTH = 320;

  private static final double BAR_WIDTH = 205;
  private static final double ROW = 42;
  private static final double LABEL = 13;
  private static final double BAR_TOP = 19;

  /**
   * One bar.
   *
   * @param name the variant-year
   * @param labelY where its name stands
   * @param y its upper edge
   * @param sure how long it is at least
   * @param more how much longer it may be
   * @param text what it says
   * @param textX where that stands
   * @param textY its line
   * @param missing whether there is nothing to draw
   */
  public record Beam(
      String name,
      double labelY,
      double y,
      double sure,
      double more,
      String text,
      double textX,
      double textY,
      boolean missing) {}

  /**
   * What one bar is drawn from.
   *
   * @param name the variant-year
   * @param range what it may be; null where there is none
   * @param text what it says
   */
  record Measure(String name, @Nullable Interval range, String text) {}

  static Plot of(String id, String title, String description, List<Measure> measures) {
    double most = 0;
    for (Measure measure : measures) {
      Interval range = measure.range();
      most = range == null ? most : Math.max(most, range.high().value().doubleValue());
    }
    double scale = most > 0 ? BAR_WIDTH / most : 0;
    List<Beam> beams = new ArrayList<>();
    for (Measure measure : measures) {
      beams.add(beam(measure, beams.size() * ROW, scale));
    }
    return new Plot(id, title, description, beams.size() * ROW, List.copyOf(beams));
  }

  /** A bar; what is below nothing has no length. */
  private static Beam beam(Measure measure, double top, double scale) {
    Interval range = measure.range();
    double low = range == null ? 0 : Math.max(0, range.low().value().doubleValue() * scale);
    double high = range == null ? 0 : Math.max(0, range.high().value().doubleValue() * scale);
    return new Beam(
        measure.name(),
        top + LABEL,
        top + BAR_TOP,
        round(low),
        round(high - low),
        measure.text(),
        round(high) + 8,
        top + BAR_TOP + LABEL,
        range == null);
  }

  private static double round(double length) {
    return Math.round(length * 10) / 10.0;
  }
}
