package club.yearline.browse;

/** A rectangle of a drawing. */
record Frame(double x, double y, double width, double height) {

  Frame {
    x = tenth(x);
    y = tenth(y);
    width = tenth(width);
    height = tenth(height);
  }

  /** To a tenth of a unit: finer is not seen, and makes pages heavier. */
  static double tenth(double value) {
    return Math.round(value * 10) / 10.0;
  }

  double right() {
    return x + width;
  }

  double bottom() {
    return y + height;
  }

  /** A part of this rectangle across, from and to being shares of its width. */
  Frame across(double from, double to) {
    return new Frame(x + width * from, y, width * (to - from), height);
  }

  /** A part of this rectangle downwards, from and to being shares of its height. */
  Frame down(double from, double to) {
    return new Frame(x, y + height * from, width, height * (to - from));
  }
}
