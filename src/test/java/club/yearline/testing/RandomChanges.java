package club.yearline.testing;

import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.Serial;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.Values;
import club.yearline.effectivity.Variant;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Random changes with cut-ins of every kind: at start, by year, by serial, by both, with either end
 * missing, outside blocks and runs.
 */
final class RandomChanges {

  private final Dice dice;
  private final Evidence evidence;
  private final List<Variant> variants;
  private final List<Series> series;
  private final Set<String> started = new HashSet<>();

  RandomChanges(Dice dice, Evidence evidence, List<Variant> variants, List<Series> series) {
    this.dice = dice;
    this.evidence = evidence;
    this.variants = variants;
    this.series = series;
  }

  List<Change> of(List<Feature> features) {
    List<Change> changes = new ArrayList<>();
    for (Feature feature : features) {
      int count = dice.between(1, 5);
      for (int i = 0; i < count; i++) {
        changes.add(change(feature, feature.key() + "-change-" + i));
      }
    }
    return changes;
  }

  private Change change(Feature feature, String key) {
    List<CutIn> cutIns = new ArrayList<>();
    for (Variant variant : dice.some(variants, 1, 3)) {
      cutIns.add(cutIn(feature.key(), variant));
    }
    return new Change(
        key,
        feature.key(),
        "Title of " + key,
        evidence.text(),
        offering(feature),
        cutIns,
        evidence.citations(dice.pick(cutIns).variant()));
  }

  private List<Offered> offering(Feature feature) {
    List<Offered> offering = new ArrayList<>();
    Set<String> offered = new HashSet<>();
    for (String value : dice.some(valuesOf(feature), 1, 3)) {
      if (offered.add(Values.canonical(value))) {
        Fit fit = dice.chance(0.6) ? Fit.STANDARD : Fit.OPTION;
        boolean rated = fit == Fit.OPTION && dice.chance(0.5);
        offering.add(
            new Offered(
                value, fit, rated ? new BigDecimal(dice.pick("0.1", "0.25", "0.30")) : null));
      }
    }
    return offering;
  }

  static List<String> valuesOf(Feature feature) {
    return feature.isNumber()
        ? RandomFeatures.NUMBERS
        : feature.values().stream().map(v -> v.key()).toList();
  }

  private CutIn cutIn(String feature, Variant variant) {
    if (dice.chance(0.3) && started.add(feature + "/" + variant.key())) {
      return CutIn.atStart(variant.key());
    }
    boolean years = dice.chance(0.6);
    boolean serials = !years || dice.chance(0.4);
    Integer[] year = years ? ends(1958, 1976) : new Integer[2];
    if (!serials) {
      return new CutIn(variant.key(), false, year[0], year[1], null, null, null);
    }
    Series own = dice.pick(seriesOf(variant));
    String[] serial = serials(own);
    return new CutIn(variant.key(), false, year[0], year[1], own.key(), serial[0], serial[1]);
  }

  private List<Series> seriesOf(Variant variant) {
    return series.stream().filter(s -> s.family().equals(variant.family())).toList();
  }

  /** First and settled, in this order and often the same; either may be missing, never both. */
  private Integer[] ends(int low, int high) {
    int first = dice.between(low, high);
    int settled = dice.chance(0.4) ? first : Math.min(high, first + dice.between(0, 4));
    int missing = dice.between(0, 5);
    return new Integer[] {missing == 0 ? null : first, missing == 1 ? null : settled};
  }

  private String[] serials(Series own) {
    Integer[] ordinals = ends(0, 58);
    boolean lettered = dice.chance(0.1) && ordinals[0] != null && ordinals[1] != null;
    Serial first = ordinals[0] == null ? null : Serial.of(ordinals[0]);
    Serial settled =
        ordinals[1] == null
            ? null
            : lettered ? new Serial(ordinals[1], 'A') : Serial.of(ordinals[1]);
    return new String[] {
      first == null ? null : RandomSeries.stamped(dice, own, first, null),
      settled == null ? null : RandomSeries.stamped(dice, own, settled, null)
    };
  }
}
