package club.yearline.groundschool;

import club.yearline.groundschool.WallChart.Mark;
import club.yearline.groundschool.WallChart.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** Sets variants below each other, or beside each other where their years leave the room. */
final class WallBlocks {

  private static final double NAME_CHARACTER = 8;

  private final double top;
  private final double gap;
  private final List<Row> rows = new ArrayList<>();
  private final List<Box> boxes = new ArrayList<>();

  WallBlocks(double top, double gap) {
    this.top = top;
    this.gap = gap;
  }

  /** What a variant takes up. */
  private record Box(double left, double right, double top, double bottom) {

    static Box of(Row row) {
      double left =
          DoubleStream.concat(
                  row.runs().stream().mapToDouble(r -> r.x()),
                  row.marks().stream().mapToDouble(WallBlocks::leftOf))
              .min()
              .orElse(row.x());
      double right =
          Stream.of(
                  row.runs().stream().mapToDouble(r -> r.x() + r.width()),
                  row.marks().stream().mapToDouble(WallBlocks::rightOf),
                  DoubleStream.of(row.x() + row.name().length() * NAME_CHARACTER))
              .flatMapToDouble(s -> s)
              .max()
              .orElse(row.x());
      double low =
          DoubleStream.concat(
                  row.runs().stream().mapToDouble(r -> r.y() + r.height()),
                  row.marks().stream().mapToDouble(m -> m.y() + 5))
              .max()
              .orElse(row.y());
      return new Box(Math.min(left, row.x()), right, row.y(), low);
    }

    Box at(double y) {
      return new Box(left, right, y, y + bottom - top);
    }

    boolean meets(Box other, double gap) {
      return left < other.right + gap
          && other.left < right + gap
          && top < other.bottom + gap
          && other.top < bottom + gap;
    }
  }

  private static double leftOf(Mark mark) {
    return mark.left() ? mark.textX() - WallLines.width(mark.text()) : mark.x();
  }

  private static double rightOf(Mark mark) {
    return mark.left() ? mark.x() + mark.width() : mark.textX() + WallLines.width(mark.text());
  }

  /** Adds a variant as high up as it fits. */
  void add(Row row) {
    Box box = Box.of(row);
    double y =
        DoubleStream.concat(DoubleStream.of(top), boxes.stream().mapToDouble(b -> b.bottom() + gap))
            .sorted()
            .filter(at -> boxes.stream().noneMatch(b -> b.meets(box.at(at), gap * 0.99)))
            .findFirst()
            .orElse(bottom());
    boxes.add(box.at(y));
    rows.add(row.down(y - row.y()));
  }

  List<Row> rows() {
    return List.copyOf(rows);
  }

  /** Where the lowest ends, with the gap. */
  double bottom() {
    return boxes.stream().mapToDouble(Box::bottom).max().orElse(top) + gap;
  }
}
