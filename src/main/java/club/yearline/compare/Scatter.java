package club.yearline.compare;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * A drawing of points, one figure across and another upward; geometry ready. Points that would lie
 * on each other share one mark and name all of their letters.
 *
 * @param across the ticks of the lower axis
 * @param upward the ticks of the left axis
 * @param dots the points
 */
public record Scatter(List<Mark> across, List<Mark> upward, List<Dot> dots) {

  private static final double LEFT = 56;
  private static final double RIGHT = 440;
  private static final double TOP = 26;
  private static final double BOTTOM = 250;
  private static final double NEAR = 12;
  private static final int FEWEST_TICKS = 4;

  /** A tick: where it stands and what it says. */
  public record Mark(double at, String text) {}

  /**
   * A point, and the field in which it may lie where its figures are ranges.
   *
   * @param letters whose it is
   * @param x its middle
   * @param y its middle
   * @param left of the field
   * @param top of the field
   * @param width of the field; nothing where it is known
   * @param height of the field
   */
  public record Dot(
      String letters, double x, double y, double left, double top, double width, double height) {}

  /** What one point is drawn from. */
  record Pair(String letter, Interval across, Interval upward) {}

  static Scatter of(List<Pair> pairs) {
    Axis across = Axis.over(pairs.stream().map(Pair::across).toList(), LEFT, RIGHT);
    Axis upward = Axis.over(pairs.stream().map(Pair::upward).toList(), BOTTOM, TOP);
    List<Dot> dots = new ArrayList<>();
    pairs.forEach(p -> add(dots, dot(p, across, upward)));
    return new Scatter(across.ticks(), upward.ticks(), List.copyOf(dots));
  }

  private static void add(List<Dot> dots, Dot dot) {
    for (int i = 0; i < dots.size(); i++) {
      Dot other = dots.get(i);
      if (Math.hypot(other.x - dot.x, other.y - dot.y) < NEAR) {
        String letters = other.letters + ", " + dot.letters;
        dots.set(
            i,
            new Dot(letters, other.x, other.y, other.left, other.top, other.width, other.height));
        return;
      }
    }
    dots.add(dot);
  }

  private static Dot dot(Pair pair, Axis across, Axis upward) {
    double left = across.at(pair.across.low());
    double right = across.at(pair.across.high());
    double bottom = upward.at(pair.upward.low());
    double top = upward.at(pair.upward.high());
    return new Dot(
        pair.letter,
        round((left + right) / 2),
        round((top + bottom) / 2),
        round(left),
        round(top),
        round(right - left),
        round(bottom - top));
  }

  private static double round(double place) {
    return Math.round(place * 10) / 10.0;
  }

  /** Whole steps of 1, 2 or 5 times a power of ten around all numbers, from nothing if near. */
  private record Axis(double from, double to, double first, double step, int steps) {

    static Axis over(List<Interval> ranges, double from, double to) {
      double low = ranges.stream().mapToDouble(r -> r.low().value().doubleValue()).min().orElse(0);
      double high =
          ranges.stream().mapToDouble(r -> r.high().value().doubleValue()).max().orElse(1);
      double least = low > 0 && low < high / 2 ? 0 : low;
      double step = step(Math.max(high - least, Math.max(Math.abs(high), 1) / 10));
      double first = Math.floor(least / step - 1e-9) * step;
      int steps = Math.max((int) Math.ceil((high - first) / step + 1e-9), 1);
      return new Axis(from, to, first, step, steps);
    }

    private static double step(double span) {
      double power = Math.pow(10, Math.floor(Math.log10(span / FEWEST_TICKS)));
      double lead = span / FEWEST_TICKS / power;
      double nice = lead < 2 ? 1 : lead < 5 ? 2 : 5;
      return nice * power;
    }

    double at(Amount amount) {
      double part = (amount.value().doubleValue() - first) / (steps * step);
      return from + part * (to - from);
    }

    List<Mark> ticks() {
      List<Mark> ticks = new ArrayList<>();
      for (int i = 0; i <= steps; i++) {
        String text =
            BigDecimal.valueOf(first + i * step)
                .setScale(6, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
        ticks.add(new Mark(round(from + (to - from) * i / steps), text.replace('-', '−')));
      }
      return List.copyOf(ticks);
    }
  }
}
