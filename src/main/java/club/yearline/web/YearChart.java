package club.yearline.web;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A drawing with years across and a row of bars for each thing: production runs of variants, the
 * timeline of a feature. Rendered by {@code fragments/drawing :: years}.
 */
public final class YearChart {

  private static final double TOP = 24;
  private static final double LABEL = 14;
  private static final double BAR = 18;
  private static final double ROW = 44;
  private static final double MARGIN = 20;
  private static final double WIDE = 840;

  private final String id;
  private final String title;
  private final String description;
  private final YearScale scale;
  private final List<Row> rows = new ArrayList<>();
  private final List<Link> links = new ArrayList<>();

  /**
   * A drawing without rows yet.
   *
   * @param id unique within the page: letters, digits, hyphens
   * @param title its name
   * @param description what it shows, in a sentence, for those who cannot see it
   * @param first the first year
   * @param last the last year, inclusive
   */
  public YearChart(String id, String title, String description, int first, int last) {
    this.id = id;
    this.title = title;
    this.description = description;
    this.scale = new YearScale(first, last, MARGIN, stepFor(last - first + 1));
  }

  /** Few years may be wide; many still leave room for their labels. */
  private static double stepFor(int years) {
    return Math.min(Math.max(WIDE / years, 20), 56);
  }

  /** Adds a row; its bars are added to it. */
  public Row row(String label) {
    Row row = new Row(label, TOP + rows.size() * ROW);
    rows.add(row);
    return row;
  }

  /**
   * Draws a line of descent from the end of one row's bars to the beginning of another's.
   *
   * @param beside whether the two were built beside each other rather than one after the other
   */
  public void link(Row from, Row to, boolean beside) {
    links.add(Link.between(from, to, beside));
  }

  public String id() {
    return id;
  }

  public String title() {
    return title;
  }

  public String description() {
    return description;
  }

  public double width() {
    return scale.right() + MARGIN;
  }

  /** Whether it may be enlarged to the width of the page. */
  public boolean isWide() {
    return width() >= WIDE;
  }

  public double height() {
    return TOP + rows.size() * ROW;
  }

  public List<Tick> ticks() {
    return scale.ticks();
  }

  public List<Row> rows() {
    return List.copyOf(rows);
  }

  public List<Link> links() {
    return List.copyOf(links);
  }

  /** One line of a chart: a label above its bars. */
  public final class Row {

    private final String label;
    private final double top;
    private final List<Bar> bars = new ArrayList<>();

    private Row(String label, double top) {
      this.label = label;
      this.top = top;
    }

    /**
     * Adds a bar over whole years.
     *
     * @param first the first year
     * @param last the last year, inclusive
     * @param state decides the pattern, see {@link Bar#state}
     * @param label what the bar says, in words
     * @param href where it leads; null where it leads nowhere
     */
    public Row bar(int first, int last, String state, String label, @Nullable String href) {
      double x = scale.x(first);
      bars.add(new Bar(x, top + LABEL + 4, scale.x(last + 1) - x, BAR, state, label, href));
      return this;
    }

    public String label() {
      return label;
    }

    /** Where the label begins: above the first bar, but never so far right that it is cut off. */
    public double x() {
      double start = bars.stream().mapToDouble(Bar::x).min().orElse(scale.x(scale.first()));
      return Math.max(MARGIN, Math.min(start, width() - MARGIN - label.length() * 7.3));
    }

    public double labelY() {
      return top + LABEL;
    }

    public List<Bar> bars() {
      return List.copyOf(bars);
    }

    private double middle() {
      return top + LABEL + 4 + BAR / 2;
    }

    private double start() {
      return bars.stream().mapToDouble(Bar::x).min().orElse(MARGIN);
    }
  }

  /**
   * A line from one row to another.
   *
   * @param path SVG path data
   * @param beside whether the two were built beside each other
   */
  public record Link(String path, boolean beside) {

    private static Link between(Row from, Row to, boolean beside) {
      double x = Math.max(to.start() - 8, 4);
      double fromX = Math.max(from.start(), 4);
      String path =
          fromX <= x
              ? "M%.1f %.1fV%.1fH%.1f"
                  .formatted(x, from.middle() + BAR / 2, to.middle(), to.start())
              : "M%.1f %.1fH%.1fV%.1fH%.1f"
                  .formatted(fromX, from.middle(), x, to.middle(), to.start());
      return new Link(path, beside);
    }
  }
}
