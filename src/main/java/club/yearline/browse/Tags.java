package club.yearline.browse;

import club.yearline.browse.FeatureChart.Tag;
import java.util.ArrayList;
import java.util.List;

/** Places texts inside a rectangle of a drawing, where they fit. */
final class Tags {

  /** Width of a character of the stamped face at the size that drawings use. */
  static final double CHARACTER = 7.3;

  private static final double LINE = 14;
  private static final double INSET = 3;

  private final List<Tag> placed = new ArrayList<>();

  /** Whether a text fits into a rectangle. */
  static boolean fits(String text, Frame frame) {
    return groundWidth(text) <= frame.width() - 2 && LINE <= frame.height();
  }

  private static double groundWidth(String text) {
    return text.length() * CHARACTER + 2 * INSET;
  }

  /** Writes the first of the texts that fits, in the middle of the rectangle. */
  Tags add(Frame frame, String... choices) {
    for (String text : choices) {
      if (fits(text, frame)) {
        double width = groundWidth(text);
        double x = frame.x() + frame.width() / 2;
        double y = frame.y() + frame.height() / 2;
        Frame ground = new Frame(x - width / 2, y - LINE / 2, width, LINE);
        placed.add(new Tag(ground, Frame.tenth(x), Frame.tenth(y + 4), text));
        break;
      }
    }
    return this;
  }

  List<Tag> placed() {
    return List.copyOf(placed);
  }
}
