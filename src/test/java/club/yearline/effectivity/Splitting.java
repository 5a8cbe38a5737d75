package club.yearline.effectivity;

import club.yearline.testing.Dice;
import java.util.ArrayList;
import java.util.List;

/** Cuts a random block of a catalogue in two, where no lettered serial lies. */
final class Splitting {

  private Splitting() {}

  static Records of(Records records, Dice dice) {
    if (records.blocks().isEmpty()) {
      return records;
    }
    SlowSerials serials = new SlowSerials(records);
    SerialBlock block = dice.pick(records.blocks());
    List<Serial> inner =
        serials.all(block.series()).stream()
            .filter(s -> serials.holds(block, s) && s.suffix() == Serial.NO_SUFFIX)
            .filter(s -> serials.holds(block, Serial.of(Math.max(0, s.ordinal() - 1))))
            .filter(s -> s.ordinal() > 0 && !lettered(serials, block, s.ordinal() - 1))
            .toList();
    return inner.isEmpty() ? records : split(records, block, dice.pick(inner));
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
