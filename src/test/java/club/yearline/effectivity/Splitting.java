package club.yearline.effectivity;

import club.yearline.testing.Dice;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Cuts a random block of a catalogue in two, where no lettered serial lies. Blocks that share
 * serials with one of the same variant and another year are left whole: which year such a serial
 * counts by depends on where its blocks begin.
 */
final class Splitting {

  private Splitting() {}

  static Records of(Records records, Dice dice) {
    SlowSerials serials = new SlowSerials(records);
    List<SerialBlock> whole =
        records.blocks().stream().filter(b -> !sharesWithAnotherYear(serials, b)).toList();
    if (whole.isEmpty()) {
      return records;
    }
    SerialBlock block = dice.pick(whole);
    List<Serial> inner =
        serials.all(block.series()).stream()
            .filter(s -> serials.holds(block, s) && s.suffix() == Serial.NO_SUFFIX)
            .filter(s -> serials.holds(block, Serial.of(Math.max(0, s.ordinal() - 1))))
            .filter(s -> s.ordinal() > 0 && !lettered(serials, block, s.ordinal() - 1))
            .toList();
    return inner.isEmpty() ? records : split(records, block, dice.pick(inner));
  }

  private static boolean sharesWithAnotherYear(SlowSerials serials, SerialBlock block) {
    return serials.blocksOfVariant(block.variant()).stream()
        .filter(b -> b.series().equals(block.series()) && !Objects.equals(b.year(), block.year()))
        .anyMatch(
            b -> serials.holds(b, serials.first(block)) || serials.holds(block, serials.first(b)));
  }

  private static boolean lettered(SlowSerials serials, SerialBlock block, long ordinal) {
    return serials.named(block.series()).stream()
        .anyMatch(s -> s.ordinal() == ordinal && s.suffix() != Serial.NO_SUFFIX);
  }

  private static Records split(Records records, SerialBlock block, Serial upper) {
    Series series = new SlowSerials(records).series(block.series());
    String lower = series.show(Serial.of(upper.ordinal() - 1));
    List<Entry> entries = new ArrayList<>(records.entries());
    entries.remove(block);
    entries.add(part(block, block.key(), block.firstSerial(), lower));
    entries.add(part(block, block.key() + "-2", series.show(upper), block.lastSerial()));
    return Records.of(entries, records.pictures());
  }

  private static SerialBlock part(SerialBlock block, String key, String first, String last) {
    return new SerialBlock(
        key,
        block.series(),
        first,
        last,
        block.variant(),
        block.year(),
        block.intermixed(),
        block.citations());
  }
}
