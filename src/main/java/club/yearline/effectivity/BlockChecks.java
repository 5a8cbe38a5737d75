package club.yearline.effectivity;

import static club.yearline.effectivity.Finding.Code.GAP_IN_BLOCKS;
import static club.yearline.effectivity.Finding.Code.OVERLAPPING_BLOCKS;
import static club.yearline.effectivity.Finding.Code.REVERSED_WINDOW;
import static club.yearline.effectivity.Finding.Code.UNREADABLE_SERIAL;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Serial blocks: their serials, and how they lie beside each other in a series. */
final class BlockChecks {

  private static final String TABLE = "serial-blocks";

  private final Records records;
  private final Known known;
  private final Report report;

  BlockChecks(Records records, Known known, Report report) {
    this.records = records;
    this.known = known;
    this.report = report;
  }

  void run() {
    Map<String, List<Block>> bySeries = new TreeMap<>();
    for (SerialBlock block : records.blocks()) {
      boolean first = readable(block, "first_serial", block.firstSerial());
      boolean last = readable(block, "last_serial", block.lastSerial());
      Series series = known.series(block.series()).orElse(null);
      if (series != null && first && last && inOrder(block)) {
        bySeries
            .computeIfAbsent(series.key(), k -> new ArrayList<>())
            .add(Block.of(block, series, 0));
      }
    }
    bySeries.values().forEach(this::neighbours);
  }

  private boolean readable(SerialBlock block, String field, @Nullable String text) {
    if (text == null
        || known.series(block.series()).isEmpty()
        || known.serial(block.series(), text).isPresent()) {
      return true;
    }
    report.field(UNREADABLE_SERIAL, TABLE, block.key(), field, text, block.series());
    return false;
  }

  private boolean inOrder(SerialBlock block) {
    Optional<Serial> first = known.serial(block.series(), block.firstSerial());
    Optional<Serial> last = known.serial(block.series(), block.lastSerial());
    if (first.isPresent() && last.isPresent() && last.get().isBelow(first.get())) {
      report.field(
          REVERSED_WINDOW,
          TABLE,
          block.key(),
          "last_serial",
          block.lastSerial(),
          block.firstSerial());
      return false;
    }
    return true;
  }

  private void neighbours(List<Block> blocks) {
    blocks.sort(Block.IN_SERIES);
    List<Block> reaching = new ArrayList<>();
    @Nullable Block furthest = null;
    for (Block block : blocks) {
      reaching.removeIf(b -> !b.endless() && !block.first().isBelow(b.end()));
      reaching.stream()
          .filter(b -> !(b.entry().intermixed() && block.entry().intermixed()))
          .forEach(b -> overlap(block, b));
      if (furthest != null && reaching.isEmpty()) {
        gap(furthest, block);
      }
      reaching.add(block);
      furthest = furthest == null || furthest.end().isBelow(block.end()) ? block : furthest;
    }
  }

  private void overlap(Block block, Block earlier) {
    report.field(
        OVERLAPPING_BLOCKS,
        TABLE,
        block.entry().key(),
        "first_serial",
        block.entry().firstSerial(),
        earlier.entry().key());
  }

  private void gap(Block below, Block above) {
    long first = below.end().plainFloor();
    long last = above.first().ordinal() - 1;
    if (first <= last) {
      report.record(
          GAP_IN_BLOCKS,
          TABLE,
          above.entry().key(),
          below.entry().key(),
          above.series().show(Serial.of(first)),
          above.series().show(Serial.of(last)));
    }
  }
}
