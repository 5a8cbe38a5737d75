package club.yearline.groundschool;

import club.yearline.groundschool.WallChart.Mark;
import java.util.ArrayList;
import java.util.List;

/** Lines of words below a variant: each change goes to the first line where it has room. */
final class WallLines {

  private static final double SIGN = 9;
  private static final double SPACE = 9;

  /** Width of a character of the drawing's words. */
  private static final double CHARACTER = 4.4;

  private final double firstLine;
  private final double height;
  private final double right;
  private final List<Double> ends = new ArrayList<>();

  WallLines(double firstLine, double height, double right) {
    this.firstLine = firstLine;
    this.height = height;
    this.right = right;
  }

  /** Places a change; words that would leave the sheet stand on the left of the sign. */
  Mark place(String kind, double x, double width, String text) {
    double words = width(text);
    double sign = Math.max(width, SIGN);
    boolean left = x + sign + 3 + words > right;
    double from = left ? x - 3 - words : x;
    double to = left ? x + sign : x + sign + 3 + words;
    int line = 0;
    while (line < ends.size() && ends.get(line) + SPACE > from) {
      line++;
    }
    if (line == ends.size()) {
      ends.add(0.0);
    }
    ends.set(line, to);
    return new Mark(
        kind,
        tenth(x),
        tenth(firstLine + line * height),
        tenth(width),
        tenth(left ? x - 3 : x + sign + 3),
        left,
        text);
  }

  /** How long words are. */
  static double width(String text) {
    return text.length() * CHARACTER;
  }

  private static double tenth(double value) {
    return Math.round(value * 10) / 10.0;
  }
}
