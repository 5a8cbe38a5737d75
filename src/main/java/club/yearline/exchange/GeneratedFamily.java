package club.yearline.exchange;

import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Records;
import club.yearline.effectivity.Retrofit;
import club.yearline.effectivity.Variant;
import club.yearline.effectivity.YearMeaning;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Invents one family with all that belongs to it: 999 rows, free of errors. */
final class GeneratedFamily {

  private static final List<String> STARTS =
      List.of("Ar", "Bel", "Cor", "Dal", "Em", "Fen", "Gal", "Hol", "Il", "Jor");
  private static final List<String> ENDS =
      List.of("dan", "mor", "vik", "len", "sta", "rin", "tor", "bek", "nes", "lund");
  private static final int RETROFITS = 18;

  private final String key;
  private final int index;
  private final List<Feature> features;
  private final GeneratedEvidence evidence;
  private final GeneratedProduction production;
  private final GeneratedChanges changes;

  GeneratedFamily(long seed, int index, List<Feature> features) {
    Random random = new Random(seed * Generator.MOST_FAMILIES + index);
    this.key = String.format("f%04d", index);
    this.index = index;
    this.features = features;
    this.evidence = new GeneratedEvidence(key, random);
    this.production = new GeneratedProduction(key, index, random, evidence);
    this.changes = new GeneratedChanges(key, features, production, evidence, random);
  }

  /** An invented name, one of a hundred. */
  static String name(int index) {
    return STARTS.get(index / ENDS.size() % STARTS.size()) + ENDS.get(index % ENDS.size());
  }

  Records make() {
    List<Entry> entries = new ArrayList<>();
    entries.add(family());
    entries.addAll(production.variants());
    entries.addAll(production.series());
    entries.addAll(production.blocks());
    entries.addAll(changes.make());
    for (int i = 0; i < RETROFITS; i++) {
      entries.add(retrofit(i));
    }
    entries.addAll(evidence.sources());
    return Records.of(entries, List.of());
  }

  private Family family() {
    String name = name(index) + " " + (index + 1);
    return new Family(
        key,
        "Invented Aero Works",
        name,
        null,
        YearMeaning.MODEL_YEAR,
        null,
        null,
        List.of(evidence.supporting()));
  }

  private Retrofit retrofit(int i) {
    Variant variant = production.variants().get(i % GeneratedProduction.VARIANTS);
    Feature feature = features.get(i * 2);
    return new Retrofit(
        key + "-retrofit-" + i,
        feature.key(),
        feature.values().get(1).key(),
        variant.key(),
        variant.runs().get(0).firstYear(),
        null,
        null,
        null,
        null,
        "KIT-" + index + "-" + i,
        null,
        List.of(evidence.supporting()));
  }
}
