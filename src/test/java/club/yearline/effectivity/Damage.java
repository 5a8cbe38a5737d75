package club.yearline.effectivity;

import club.yearline.testing.Dice;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** Breaks random records of a catalogue in random ways. */
final class Damage {

  private final Dice dice;
  private Records records;

  private Damage(Records records, Dice dice) {
    this.records = records;
    this.dice = dice;
  }

  static Records of(Records sound, Dice dice) {
    Damage damage = new Damage(sound, dice);
    int count = dice.between(1, 3);
    for (int i = 0; i < count; i++) {
      damage.once();
    }
    return damage.records;
  }

  private void once() {
    switch (dice.between(0, 5)) {
      case 0, 1 -> replace(records.blocks(), this::block);
      case 2, 3 -> replace(records.changes(), this::change);
      case 4 -> replace(records.retrofits(), this::retrofit);
      default -> twice();
    }
  }

  private <T extends Entry> void replace(List<T> kind, UnaryOperator<T> broken) {
    if (kind.isEmpty()) {
      return;
    }
    T entry = dice.pick(kind);
    List<Entry> entries = new ArrayList<>(records.entries());
    entries.set(entries.indexOf(entry), broken.apply(entry));
    records = Records.of(entries, records.pictures());
  }

  private void twice() {
    List<Entry> entries = new ArrayList<>(records.entries());
    List<? extends Entry> kind = dice.chance(0.5) ? records.changes() : records.features();
    if (!kind.isEmpty()) {
      entries.add(dice.pick(kind));
      records = Records.of(entries, records.pictures());
    }
  }

  private SerialBlock block(SerialBlock b) {
    Series series = dice.pick(records.series());
    String far = series.show(Serial.of(dice.between(0, 55)));
    String last = b.lastSerial() == null ? b.firstSerial() : b.lastSerial();
    return switch (dice.between(0, 6)) {
      case 0 -> block(b, b.series(), last, b.firstSerial(), b.variant());
      case 1 -> block(b, b.series(), "?", b.lastSerial(), b.variant());
      case 2 -> block(b, b.series(), b.firstSerial(), "7-?", b.variant());
      case 3 -> block(b, b.series(), b.firstSerial(), null, b.variant());
      case 4 -> block(b, "nowhere", b.firstSerial(), b.lastSerial(), b.variant());
      case 5 -> block(b, series.key(), far, null, b.variant());
      default -> block(b, b.series(), b.firstSerial(), b.lastSerial(), "nowhere");
    };
  }

  private static SerialBlock block(
      SerialBlock b, String series, String first, @Nullable String last, String variant) {
    return new SerialBlock(
        b.key(), series, first, last, variant, b.year(), b.intermixed(), b.citations());
  }

  private Change change(Change c) {
    List<Offered> offering = new ArrayList<>(c.offering());
    List<CutIn> cutIns = new ArrayList<>(c.cutIns());
    String feature = c.feature();
    switch (dice.between(0, 5)) {
      case 0 -> feature = "nowhere";
      case 1 -> offering.clear();
      case 2 -> offering.add(new Offered("no-value", Fit.STANDARD, null));
      case 3 -> offering.addAll(c.offering());
      case 4 -> cutIns.add(dice.pick(c.cutIns()));
      default -> cutIns.set(0, cutIn(c.cutIns().get(0)));
    }
    return new Change(c.key(), feature, c.title(), c.detail(), offering, cutIns, c.citations());
  }

  private CutIn cutIn(CutIn c) {
    String series = dice.pick(records.series()).key();
    return switch (dice.between(0, 6)) {
      case 0 -> new CutIn(c.variant(), false, 1966, 1965, null, null, null);
      case 1 -> new CutIn(c.variant(), false, null, null, null, null, null);
      case 2 -> new CutIn(c.variant(), true, 1966, null, null, null, null);
      case 3 -> CutIn.atStart(c.variant());
      case 4 -> CutIn.atStart("nowhere");
      case 5 -> new CutIn(c.variant(), false, null, 1966, series, "?", null);
      default -> new CutIn(c.variant(), false, null, 1966, "nowhere", "1", null);
    };
  }

  private Retrofit retrofit(Retrofit r) {
    boolean value = dice.chance(0.5);
    return new Retrofit(
        r.key(),
        r.feature(),
        value ? "no-value" : r.value(),
        value ? r.variant() : "nowhere",
        1970,
        dice.maybe(0.5, 1969),
        r.series(),
        r.firstSerial(),
        r.lastSerial(),
        r.document(),
        r.note(),
        r.citations());
  }
}
