package club.yearline.testing;

import club.yearline.effectivity.ProductionRun;
import club.yearline.effectivity.Serial;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.Variant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Random series and their blocks: lone serials, lettered ends, gaps, blocks without a year, without
 * an end, intermixed with another. Blocks that are not intermixed never share a serial.
 */
final class RandomSeries {

  private static final int LAST_ORDINAL = 50;

  private final Dice dice;
  private final Evidence evidence;
  private final List<Variant> variants;
  private final int firstYear;
  private final List<SerialBlock> blocks = new ArrayList<>();

  RandomSeries(Dice dice, Evidence evidence, List<Variant> variants, int firstYear) {
    this.dice = dice;
    this.evidence = evidence;
    this.variants = variants;
    this.firstYear = firstYear;
  }

  Series make(String key, String family) {
    return new Series(
        key,
        family,
        dice.pick(null, "LT-", "TS", "Q."),
        dice.pick(null, 1, 3, 4),
        dice.chance(0.15),
        evidence.text(),
        evidence.citations(null));
  }

  List<SerialBlock> blocks(Series series) {
    int count = dice.between(0, 7);
    Serial first = Serial.of(dice.between(0, 3));
    for (int i = 0; i < count && first.ordinal() < LAST_ORDINAL; i++) {
      Serial last = lastFrom(first);
      addBlock(series, first, last, i == count - 1 && dice.chance(0.3));
      first = firstAfter(last);
    }
    return blocks;
  }

  private Serial lastFrom(Serial first) {
    int more = dice.chance(0.2) ? 0 : dice.between(1, 11);
    if (more == 0) {
      return first;
    }
    long ordinal = Math.min(first.ordinal() + more, LAST_ORDINAL + 4);
    return dice.chance(0.1) ? new Serial(ordinal, 'A') : Serial.of(ordinal);
  }

  private Serial firstAfter(Serial last) {
    if (dice.chance(0.08) && last.suffix() < 'B') {
      return new Serial(last.ordinal(), 'B');
    }
    long next = last.ordinal() + 1 + (dice.chance(0.3) ? dice.between(1, 5) : 0);
    return dice.chance(0.06) ? new Serial(next, 'A') : Serial.of(next);
  }

  private void addBlock(Series series, Serial first, Serial last, boolean open) {
    boolean intermixed = dice.chance(0.25);
    blocks.add(block(series, first, open ? null : last, intermixed));
    if (!intermixed || dice.chance(0.1)) {
      return;
    }
    if (last.ordinal() == first.ordinal() || dice.chance(0.4)) {
      blocks.add(block(series, first, open ? null : last, true));
    } else {
      Serial middle = Serial.of(dice.between((int) first.ordinal() + 1, (int) last.ordinal()));
      boolean upper = dice.chance(0.5);
      blocks.add(block(series, upper ? middle : first, upper ? last : middle, true));
    }
  }

  private SerialBlock block(Series series, Serial first, Serial last, boolean intermixed) {
    Variant variant = dice.pick(variants);
    Integer year = dice.chance(0.15) ? null : yearOf(variant);
    return new SerialBlock(
        series.key() + "-block-" + blocks.size(),
        series.key(),
        stamped(dice, series, first, year),
        last == null ? null : stamped(dice, series, last, year),
        variant.key(),
        year,
        intermixed,
        evidence.citations(null));
  }

  /** A year of the variant's runs, rarely another. */
  private int yearOf(Variant variant) {
    if (variant.runs().isEmpty() || dice.chance(0.05)) {
      return firstYear + dice.between(0, 14);
    }
    ProductionRun run = dice.pick(variant.runs());
    int last = run.lastYear() == null ? run.firstYear() + 3 : run.lastYear();
    return dice.between(run.firstYear(), last);
  }

  /** A serial as somebody recorded it: as stamped, or with other case, spaces and zeros. */
  static String stamped(Dice dice, Series series, Serial serial, Integer year) {
    String text = series.show(serial);
    if (series.yearSuffix() && year != null && dice.chance(0.8)) {
      text += dice.chance(0.5) ? "-" + year : "-" + String.format("%02d", year % 100);
    }
    return dice.chance(0.1) ? text.toLowerCase(Locale.ROOT).replace('-', '\u2013') : text;
  }
}
