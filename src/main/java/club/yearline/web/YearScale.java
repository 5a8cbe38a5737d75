package club.yearline.web;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Where years stand on a drawing: each has a strip of the same width, so that a bar from a year to
 * the same year is one strip wide.
 *
 * @param first the first year shown
 * @param last the last year shown, inclusive
 * @param left where the first year begins, in units of the drawing
 * @param step the width of a year
 */
public record YearScale(int first, int last, double left, double step) {

  /** Years between labelled ticks. */
  private static final int MAJOR = 5;

  public YearScale {
    if (last < first) {
      throw new IllegalArgumentException("A scale from " + first + " cannot end in " + last);
    }
    if (step <= 0) {
      throw new IllegalArgumentException("A year needs a width above 0, not " + step);
    }
  }

  /** Where a year begins; years outside the scale stand at its nearer edge. */
  public double x(int year) {
    return left + (Math.min(Math.max(year, first), last + 1) - first) * step;
  }

  /** Where the last year ends. */
  public double right() {
    return x(last + 1);
  }

  /** A tick at the beginning of each year; those of every fifth year are labelled. */
  public List<Tick> ticks() {
    return IntStream.rangeClosed(first, last + 1)
        .mapToObj(year -> new Tick(x(year), year, year % MAJOR == 0))
        .toList();
  }
}
