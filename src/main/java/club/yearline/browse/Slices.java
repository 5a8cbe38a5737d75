package club.yearline.browse;

import java.util.Locale;

/** Cuts a rectangle into slanted slices: what fades out to the left, what comes in to the right. */
final class Slices {

  private final Frame frame;
  private final int count;

  Slices(Frame frame, int count) {
    this.frame = frame;
    this.count = count;
  }

  /** The corners of a slice, counted from 0. */
  String points(int index) {
    return String.format(
        Locale.ROOT,
        "%.1f,%.1f %.1f,%.1f %.1f,%.1f %.1f,%.1f",
        top(index),
        frame.y(),
        top(index + 1),
        frame.y(),
        bottom(index + 1),
        frame.bottom(),
        bottom(index),
        frame.bottom());
  }

  /** A corner of the slice that is wide enough to carry a letter: above left, or below right. */
  Frame corner(int index) {
    double share = 1.0 / count;
    Frame own = frame.across(index * share, (index + 1) * share);
    return count == 2 ? own.down(index * 0.4, index * 0.4 + 0.6) : own;
  }

  private double top(int boundary) {
    return boundary(boundary, lean());
  }

  private double bottom(int boundary) {
    return boundary(boundary, -lean());
  }

  private double boundary(int index, double lean) {
    boolean edge = index == 0 || index == count;
    return frame.x() + frame.width() * index / count + (edge ? 0 : lean);
  }

  private double lean() {
    return count < 2 ? 0 : frame.width() / (2.0 * (count - 1));
  }
}
