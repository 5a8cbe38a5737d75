package club.yearline.browse;

import club.yearline.catalog.Wording;
import club.yearline.effectivity.Serial;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.Series;
import java.util.List;
import java.util.Optional;

/** Serials from and to, as stamped. */
final class SerialRange {

  private SerialRange() {}

  /** The serials of one block. */
  static String of(SerialBlock block, Words words, Wording wording) {
    return block.lastSerial() == null
        ? words.say("serials.onwards", block.firstSerial())
        : wording.range(block.firstSerial(), block.lastSerial());
  }

  /** The lowest and the highest serial of some blocks of a series; empty without blocks. */
  static String around(Series series, List<SerialBlock> blocks, Words words, Wording wording) {
    Optional<Serial> lowest =
        blocks.stream().map(b -> read(series, b.firstSerial())).min(Serial::compareTo);
    if (lowest.isEmpty()) {
      return "";
    }
    String first = series.show(lowest.get());
    if (blocks.stream().anyMatch(b -> b.lastSerial() == null)) {
      return words.say("serials.onwards", first);
    }
    Serial highest = blocks.stream().map(b -> last(series, b)).max(Serial::compareTo).orElseThrow();
    return wording.range(first, series.show(highest));
  }

  static Serial read(Series series, String text) {
    return series.read(text).orElseThrow();
  }

  /** The last serial; that of a block without end is its first, the last one known for certain. */
  static Serial last(Series series, SerialBlock block) {
    return read(series, block.lastSerial() == null ? block.firstSerial() : block.lastSerial());
  }
}
