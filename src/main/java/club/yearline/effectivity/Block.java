package club.yearline.effectivity;

import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/**
 * A serial block with its serials read: {@code [first, end)}, the end being exclusive. A block that
 * goes on without end holds every later serial; for counting it ends at {@code end} too.
 */
record Block(SerialBlock entry, Series series, Serial first, Serial end, boolean endless) {

  /** By serial, then year (unknown last), then key: the one order in which blocks are walked. */
  static final Comparator<Block> IN_SERIES =
      Comparator.comparing(Block::first)
          .thenComparing(b -> b.year() == null ? Integer.MAX_VALUE : b.year())
          .thenComparing(b -> b.entry().key());

  static final Comparator<Block> BY_SERIES =
      Comparator.comparing((Block b) -> b.series().key()).thenComparing(IN_SERIES);

  /**
   * Reads a block's serials.
   *
   * @param highest the highest ordinal that any record names in the series; where an endless block
   *     ends for counting
   */
  static Block of(SerialBlock entry, Series series, long highest) {
    Serial first = readable(series, entry.firstSerial());
    if (entry.lastSerial() == null) {
      Serial end = Serial.of(Math.max(highest, first.ordinal()) + 1);
      return new Block(entry, series, first, end, true);
    }
    return new Block(entry, series, first, readable(series, entry.lastSerial()).next(), false);
  }

  static Serial readable(Series series, String text) {
    return series
        .read(text)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "'" + text + "' is no serial of series " + series.key()));
  }

  @Nullable Integer year() {
    return entry.year();
  }

  boolean holds(Serial serial) {
    return !serial.isBelow(first) && (endless || serial.isBelow(end));
  }
}
