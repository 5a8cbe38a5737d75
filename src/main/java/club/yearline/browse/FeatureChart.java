package club.yearline.browse;

import club.yearline.web.Tick;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The geometry of a feature's timeline over the variants that have it: years across, a row for each
 * variant. Rendered by {@code records/drawing :: feature}.
 *
 * @param title its name
 * @param description what it shows, for those who cannot see it
 * @param width width of the drawing
 * @param height height of the drawing
 * @param ticks the years
 * @param headings the families, above their variants
 * @param rows the variants
 * @param key what the patterns and letters mean; empty for figures
 */
public record FeatureChart(
    String title,
    String description,
    double width,
    double height,
    List<Tick> ticks,
    List<Caption> headings,
    List<Row> rows,
    List<Meaning> key) {

  /** A text at a place. */
  record Caption(double x, double y, String text) {}

  /** One variant. */
  record Row(Caption label, List<Span> spans) {}

  /**
   * Years with one answer.
   *
   * @param words the answer in words
   * @param href where it leads; null for nowhere
   * @param parts its stretches of serials; one for an answer that does not split
   * @param notes texts below it: the state's word, or what did not fit inside
   */
  record Span(String words, @Nullable String href, List<Part> parts, List<Caption> notes) {}

  /** A rectangle with one answer; its border tells the state. */
  record Part(Frame frame, String state, List<Area> areas, List<Tag> tags) {}

  /**
   * A filled polygon.
   *
   * @param points its corners, as SVG writes them
   * @param fill the pattern
   * @param option whether it was an option, so that its border is broken
   */
  record Area(String points, String fill, boolean option) {}

  /** A text on a ground of its own, so that it reads on any pattern. */
  record Tag(Frame ground, double x, double y, String text) {}

  /** What a pattern and a letter stand for. */
  public record Meaning(String fill, String letter, String label) {}
}
