package club.yearline.effectivity;

import club.yearline.testing.Dice;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Random edits such as a correction makes; the result has no error. */
final class Edits {

  private final Dice dice;

  private Edits(Dice dice) {
    this.dice = dice;
  }

  static Records of(Records records, Dice dice) {
    List<Entry> entries = new ArrayList<>(records.entries());
    int count = dice.between(1, 4);
    for (int i = 0; i < count; i++) {
      new Edits(dice).edit(entries);
    }
    return Records.of(entries, records.pictures());
  }

  private void edit(List<Entry> entries) {
    List<Entry> editable =
        entries.stream()
            .filter(
                e ->
                    e instanceof Change
                        || e instanceof SerialBlock
                        || e instanceof Retrofit
                        || e instanceof Variant)
            .toList();
    Entry entry = dice.pick(editable);
    Entry edited = edited(entry);
    if (edited == null) {
      entries.remove(entry);
    } else {
      entries.set(entries.indexOf(entry), edited);
    }
  }

  /** The entry edited; null to leave it out. */
  private @Nullable Entry edited(Entry entry) {
    if (entry instanceof Change change) {
      return dice.chance(0.2) ? null : edited(change);
    }
    if (entry instanceof SerialBlock block) {
      return dice.chance(0.5) ? null : edited(block);
    }
    return entry instanceof Variant variant ? edited(variant) : null;
  }

  private Change edited(Change c) {
    List<Offered> offering = new ArrayList<>(c.offering());
    List<CutIn> cutIns = new ArrayList<>(c.cutIns());
    boolean sourced = true;
    switch (dice.between(0, 3)) {
      case 0 -> sourced = false;
      case 1 -> offering.set(0, new Offered(offering.get(0).value(), Fit.OPTION, null));
      default -> {
        int at = dice.between(0, cutIns.size() - 1);
        cutIns.set(at, moved(cutIns.get(at)));
      }
    }
    return new Change(
        c.key(),
        c.feature(),
        c.title(),
        c.detail(),
        offering,
        cutIns,
        sourced ? c.citations() : List.of());
  }

  private CutIn moved(CutIn c) {
    if (c.series() != null && dice.chance(0.7)) {
      String only = c.settledSerial() == null ? c.firstSerial() : c.settledSerial();
      return new CutIn(c.variant(), false, null, null, c.series(), dice.maybe(0.5, only), only);
    }
    int first = dice.between(1959, 1975);
    return new CutIn(
        c.variant(), false, dice.maybe(0.7, first), first + dice.between(0, 3), null, null, null);
  }

  private SerialBlock edited(SerialBlock b) {
    return new SerialBlock(
        b.key(),
        b.series(),
        b.firstSerial(),
        dice.chance(0.5) ? b.firstSerial() : b.lastSerial(),
        b.variant(),
        dice.maybe(0.8, dice.between(1960, 1974)),
        b.intermixed(),
        b.citations());
  }

  private Variant edited(Variant v) {
    List<ProductionRun> runs = new ArrayList<>(v.runs());
    if (runs.isEmpty() || dice.chance(0.5)) {
      runs.clear();
      int first = dice.between(1958, 1970);
      runs.add(new ProductionRun(first, first + dice.between(0, 6), null));
    } else {
      runs.remove(0);
    }
    return new Variant(
        v.key(),
        v.family(),
        v.designation(),
        v.picture(),
        v.summary(),
        v.names(),
        runs,
        v.descent(),
        v.citations());
  }
}
