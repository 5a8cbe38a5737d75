package club.yearline.exchange;

import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.Variant;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Invents what every feature of a family began with, and forty later changes. */
final class GeneratedChanges {

  private static final int LATER = 40;

  /** Features that change later, some of them twice. */
  private static final int CHANGING = 30;

  private static final int VARIANTS_CHANGED = 3;

  private final String family;
  private final List<Feature> features;
  private final GeneratedProduction production;
  private final GeneratedEvidence evidence;
  private final GeneratedCutIns cutIns;
  private final int base;

  GeneratedChanges(
      String family,
      List<Feature> features,
      GeneratedProduction production,
      GeneratedEvidence evidence,
      Random random) {
    this.family = family;
    this.features = features;
    this.production = production;
    this.evidence = evidence;
    this.cutIns = new GeneratedCutIns(production.blocks(), random);
    this.base = 100 + random.nextInt(100);
  }

  List<Change> make() {
    List<Change> changes = new ArrayList<>();
    for (int i = 0; i < features.size(); i++) {
      changes.add(atStart(features.get(i), i));
    }
    for (int i = 0; i < LATER; i++) {
      changes.add(later(features.get((i % CHANGING) * 2 % features.size()), i));
    }
    return changes;
  }

  private Change atStart(Feature feature, int i) {
    List<CutIn> starts = production.variants().stream().map(v -> CutIn.atStart(v.key())).toList();
    return change("start", i, feature, offering(feature, 0, i % 5 == 0), starts);
  }

  /** The second change of a feature offers something else again than the first. */
  private Change later(Feature feature, int i) {
    List<CutIn> windows = new ArrayList<>();
    for (int v = 0; v < VARIANTS_CHANGED; v++) {
      Variant variant = production.variants().get((i + v) % GeneratedProduction.VARIANTS);
      windows.add(cutIns.make(variant, i + v));
    }
    return change("later", i, feature, offering(feature, 1 + i / CHANGING, i % 2 == 0), windows);
  }

  private Change change(
      String stem, int i, Feature feature, List<Offered> offering, List<CutIn> windows) {
    return new Change(
        String.format("%s-%s-%02d", family, stem, i),
        feature.key(),
        feature.name() + (stem.equals("start") ? " at the start" : " changed"),
        null,
        offering,
        windows,
        evidence.ofChange(windows.get(0).variant()));
  }

  private List<Offered> offering(Feature feature, int step, boolean optional) {
    Offered standard = new Offered(value(feature, step), Fit.STANDARD, null);
    return optional
        ? List.of(
            standard, new Offered(value(feature, step + 1), Fit.OPTION, new BigDecimal("0.2")))
        : List.of(standard);
  }

  private String value(Feature feature, int step) {
    return feature.isNumber()
        ? Integer.toString(base + 5 * step)
        : feature.values().get(step % feature.values().size()).key();
  }
}
