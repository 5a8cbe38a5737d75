package club.yearline.browse;

import club.yearline.browse.FeatureChart.Caption;
import java.util.ArrayList;
import java.util.List;

/** Lines of small text below a row of bars; a text goes to the first line where it has room. */
final class Lanes {

  private static final double SPACE = 6;

  private final double firstBaseline;
  private final double height;
  private final double right;

  /** Where the last text of each line ends. */
  private final List<Double> ends = new ArrayList<>();

  Lanes(double firstBaseline, double height, double right) {
    this.firstBaseline = firstBaseline;
    this.height = height;
    this.right = right;
  }

  /** Places a text below a bar, beginning at its left edge or as far right as there is room. */
  Caption place(Frame bar, String text) {
    double width = text.length() * Tags.CHARACTER;
    double x = Math.max(0, Math.min(bar.x(), right - width));
    int lane = 0;
    while (lane < ends.size() && ends.get(lane) + SPACE > x) {
      lane++;
    }
    if (lane == ends.size()) {
      ends.add(0.0);
    }
    ends.set(lane, x + width);
    return new Caption(Frame.tenth(x), Frame.tenth(firstBaseline + lane * height), text);
  }

  /** How many lines there are. */
  int used() {
    return ends.size();
  }
}
