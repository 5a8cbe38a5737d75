package club.yearline.testing;

import club.yearline.effectivity.Descent;
import club.yearline.effectivity.ProductionRun;
import club.yearline.effectivity.Relation;
import club.yearline.effectivity.SoldName;
import club.yearline.effectivity.Variant;
import java.util.ArrayList;
import java.util.List;

/** Random variants with runs, gaps, names and descent. */
final class RandomVariants {

  private final Dice dice;
  private final Evidence evidence;

  RandomVariants(Dice dice, Evidence evidence) {
    this.dice = dice;
    this.evidence = evidence;
  }

  Variant make(String key, String family, String picture, int from, List<Variant> older) {
    return new Variant(
        key,
        family,
        "LA-" + key,
        picture,
        evidence.text(),
        names(from),
        runs(from),
        descent(older),
        evidence.citations(null));
  }

  /** Mostly one run or two with a gap, the last perhaps without an end; rarely none. */
  private List<ProductionRun> runs(int from) {
    List<ProductionRun> runs = new ArrayList<>();
    int count = dice.chance(0.05) ? 0 : dice.between(1, 2);
    int year = from + dice.between(0, 4);
    for (int i = 0; i < count; i++) {
      int last = year + dice.between(0, 5);
      boolean open = i == count - 1 && dice.chance(0.2);
      runs.add(new ProductionRun(year, open ? null : last, dice.maybe(0.4, dice.between(0, 50))));
      year = last + dice.between(2, 4);
    }
    return runs;
  }

  private List<SoldName> names(int from) {
    List<SoldName> names = new ArrayList<>();
    for (String name : dice.some(List.of("Turnstone", "Turnstone II", "Sandpiper"), 0, 2)) {
      int first = from + dice.between(0, 8);
      names.add(
          new SoldName(name, dice.maybe(0.7, first), dice.maybe(0.5, first + dice.between(0, 4))));
    }
    return names;
  }

  private List<Descent> descent(List<Variant> older) {
    List<Descent> descent = new ArrayList<>();
    for (Variant parent : dice.some(older, 0, 2)) {
      descent.add(new Descent(parent.key(), dice.pick(Relation.values()), evidence.text()));
    }
    return descent;
  }
}
