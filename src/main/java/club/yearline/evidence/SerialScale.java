package club.yearline.evidence;

import club.yearline.effectivity.Serial;
import club.yearline.estimation.Bounds;
import java.util.ArrayList;
import java.util.List;

/**
 * Where serials stand on a drawing: the candidates, and half as many again on either side. What is
 * further off stands at the edge.
 */
record SerialScale(double first, double last, double left, double right) {

  private static final double LEAST = 5;

  static SerialScale around(Bounds candidates, double left, double right) {
    double beside = Math.max(LEAST, candidates.size() / 2.0);
    return new SerialScale(
        Math.max(0, candidates.first() - beside),
        Math.min(Serial.MAX_ORDINAL, candidates.last() + beside),
        left,
        right);
  }

  /** Whether a range lies on the drawing. */
  boolean shows(Bounds range) {
    return range.last() >= first && range.first() <= last;
  }

  double x(double ordinal) {
    double within = Math.min(Math.max(ordinal, first), last);
    return left + (within - first) / (last - first) * (right - left);
  }

  /** The middle of the column in which the middle of a range stands. */
  double column(Bounds range, double width) {
    double x = x(range.first() + (range.last() - range.first()) / 2.0);
    double column = Math.floor((x - left) / width) * width + left + width / 2;
    return Math.min(column, right);
  }

  /** Round ordinals to name on the axis, about as many as wanted. */
  List<Long> round(int wanted) {
    double rough = (last - first) / wanted;
    double power = Math.pow(10, Math.floor(Math.log10(Math.max(1, rough))));
    long step = (long) Math.max(1, power);
    for (long factor : new long[] {1, 2, 5, 10}) {
      step = (long) Math.max(1, power * factor);
      if (step >= rough) {
        break;
      }
    }
    List<Long> round = new ArrayList<>();
    for (long at = (long) Math.ceil(first / step) * step; at <= last; at += step) {
      round.add(at);
    }
    return round;
  }
}
