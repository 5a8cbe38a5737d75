package club.yearline.quiz;

import static club.yearline.testing.Sample.block;
import static club.yearline.testing.Sample.choice;
import static club.yearline.testing.Sample.family;
import static club.yearline.testing.Sample.number;
import static club.yearline.testing.Sample.series;
import static club.yearline.testing.Sample.source;
import static club.yearline.testing.Sample.variant;

import club.yearline.citation.Citation;
import club.yearline.citation.Stance;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.Records;
import club.yearline.testing.Dice;
import java.util.ArrayList;
import java.util.List;

/**
 * Random families as clubs know them, two variants built side by side over a dozen years: most
 * changes clean, sourced and standard, so that every kind of question is borne, and among them
 * transitions, splits, options, disputes and records without a source.
 */
final class Production {

  private static final int FIRST = 1960;
  private static final int LAST = 1972;
  private static final int A_YEAR = 20;

  private final Dice dice;
  private final List<Entry> entries = new ArrayList<>();

  private Production(Dice dice) {
    this.dice = dice;
  }

  static Records random(Dice dice) {
    Production made = new Production(dice);
    made.entries.addAll(List.of(source("book"), source("letter"), family("fam")));
    made.build("one", "A-");
    made.build("two", "B-");
    made.features();
    return Records.of(made.entries, List.of());
  }

  private void build(String key, String prefix) {
    entries.add(variant(key, "fam", FIRST, LAST));
    entries.add(series("s-" + key, "fam", prefix));
    for (int year = FIRST; year <= LAST; year++) {
      if (dice.chance(0.8)) {
        String first = prefix + (1 + (year - FIRST) * A_YEAR);
        String last = prefix + (year - FIRST + 1) * A_YEAR;
        entries.add(block(key + "-" + year, "s-" + key, first, last, key, year));
      }
    }
  }

  private void features() {
    for (int i = 0; i < 7; i++) {
      boolean figure = i == 0;
      Feature feature = figure ? number("f0", "lb") : choice("f" + i, "p", "q", "r", "s");
      entries.add(feature);
      List<String> values = figure ? List.of("100", "120.0", "140") : List.of("p", "q", "r", "s");
      for (String variant : List.of("one", "two")) {
        changes(feature, variant, dice.some(values, 1, values.size()));
      }
    }
  }

  private void changes(Feature feature, String variant, List<String> values) {
    int year = FIRST;
    for (int i = 0; i < values.size(); i++) {
      CutIn cutIn = i == 0 ? CutIn.atStart(variant) : cutIn(variant, year);
      String key = feature.key() + "-" + variant + "-" + i;
      entries.add(
          new Change(
              key,
              feature.key(),
              "Change " + key,
              null,
              offering(values.get(i), values.get(0)),
              List.of(cutIn),
              citations(key)));
      year += dice.between(1, 5);
    }
  }

  private List<Offered> offering(String value, String other) {
    Offered standard = new Offered(value, Fit.STANDARD, null);
    return dice.chance(0.1) && !value.equals(other)
        ? List.of(standard, new Offered(other, Fit.OPTION, null))
        : List.of(standard);
  }

  private CutIn cutIn(String variant, int year) {
    int settled = dice.chance(0.25) ? year + dice.between(1, 2) : year;
    if (dice.chance(0.2)) {
      String prefix = variant.equals("one") ? "A-" : "B-";
      String serial = prefix + ((year - FIRST) * A_YEAR + dice.between(1, A_YEAR));
      return new CutIn(variant, false, null, null, "s-" + variant, serial, serial);
    }
    return new CutIn(variant, false, dice.maybe(0.95, year), settled, null, null, null);
  }

  private List<Citation> citations(String key) {
    List<Citation> citations = new ArrayList<>();
    if (dice.chance(0.95)) {
      citations.add(new Citation(key + "-c", null, "book", "p. 1", Stance.SUPPORTS, null));
    }
    if (dice.chance(0.05)) {
      citations.add(new Citation(key + "-d", null, "letter", null, Stance.DISPUTES, null));
    }
    return citations;
  }
}
