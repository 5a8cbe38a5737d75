package club.yearline.effectivity;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where a question points: to one position, or why not to one. */
public sealed interface Located {

  /**
   * One position.
   *
   * @param position the position
   * @param block the block that holds its serial; null without a serial or outside all blocks
   */
  record Found(Position position, @Nullable SerialBlock block) implements Located {

    /** Whether the serial fits the series but no block: answered by the year that was given. */
    public boolean outsideBlocks() {
      return position.serial() != null && block == null;
    }
  }

  /** Neither a serial nor a variant with a year was given. */
  record Incomplete() implements Located {}

  /** The text has more characters than any serial. */
  record TooLong(int length) implements Located {}

  /** There is no variant of that key. */
  record UnknownVariant(String key) implements Located {}

  /**
   * The text is a serial of no series (of the asked variant, where one was).
   *
   * @param text the text as typed
   * @param variant the asked variant; null where none was
   */
  record NoSeries(String text, @Nullable Variant variant) implements Located {}

  /** The text is a serial, but no block holds it; each match names the nearest blocks. */
  record NoBlock(String text, List<SerialMatch> matches) implements Located {}

  /** The text points to several positions, or to a position in several series. */
  record Ambiguous(String text, List<Position> candidates) implements Located {}

  /** The serial's blocks say another variant or year than was asked. */
  record Contradiction(String text, List<SerialBlock> blocks) implements Located {}

  /** The variant was not produced in the asked year. */
  record OutsideProduction(Variant variant, int year, List<ProductionRun> runs)
      implements Located {}
}
