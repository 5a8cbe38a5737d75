package club.yearline.effectivity;

import club.yearline.citation.Citation;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * All entries that bear on one family's answers. Two equal slices compile to the same model, so
 * that a publication compiles only the families it touched.
 */
record FamilySlice(
    Family family,
    List<Variant> variants,
    List<Series> series,
    List<SerialBlock> blocks,
    List<Change> changes,
    List<Feature> features,
    List<Retrofit> retrofits,
    List<SourceEntry> sources) {

  /** Cuts records that have no error into families, by key. */
  static Map<String, FamilySlice> of(Records records) {
    Map<String, FamilySlice> slices = new LinkedHashMap<>();
    for (Family family : records.families()) {
      slices.put(family.key(), empty(family));
    }
    Map<String, FamilySlice> byVariant = new HashMap<>();
    for (Variant variant : records.variants()) {
      FamilySlice slice = known(slices, variant.family(), "family of variant " + variant.key());
      slice.variants.add(variant);
      byVariant.put(variant.key(), slice);
    }
    for (Series series : records.series()) {
      known(slices, series.family(), "family of series " + series.key()).series.add(series);
    }
    for (SerialBlock block : records.blocks()) {
      known(byVariant, block.variant(), "variant of block " + block.key()).blocks.add(block);
    }
    for (Retrofit retrofit : records.retrofits()) {
      known(byVariant, retrofit.variant(), "variant of retrofit " + retrofit.key())
          .retrofits
          .add(retrofit);
    }
    for (Change change : records.changes()) {
      change.cutIns().stream()
          .map(c -> known(byVariant, c.variant(), "variant of change " + change.key()))
          .map(slice -> slice.family().key())
          .distinct()
          .forEach(family -> known(slices, family, "family").changes.add(change));
    }
    addShared(records, slices);
    return slices;
  }

  private static FamilySlice empty(Family family) {
    return new FamilySlice(
        family,
        new ArrayList<>(),
        new ArrayList<>(),
        new ArrayList<>(),
        new ArrayList<>(),
        new ArrayList<>(),
        new ArrayList<>(),
        new ArrayList<>());
  }

  private static <T> T known(Map<String, T> map, String key, String what) {
    T found = map.get(key);
    if (found == null) {
      throw new IllegalArgumentException("Unknown " + what + ": " + key);
    }
    return found;
  }

  /** Features and sources are shared by families: each slice holds those it refers to. */
  private static void addShared(Records records, Map<String, FamilySlice> slices) {
    Map<String, Feature> features = new HashMap<>();
    records.features().forEach(f -> features.put(f.key(), f));
    Map<String, SourceEntry> sources = new HashMap<>();
    records.sources().forEach(s -> sources.put(s.key(), s));
    for (FamilySlice slice : slices.values()) {
      for (String key : slice.featureKeys()) {
        slice.features.add(known(features, key, "feature"));
      }
      for (String key : slice.sourceKeys()) {
        slice.sources.add(known(sources, key, "source"));
      }
    }
  }

  private Set<String> featureKeys() {
    Set<String> keys = new TreeSet<>();
    changes.forEach(c -> keys.add(c.feature()));
    return keys;
  }

  private Set<String> sourceKeys() {
    Set<String> keys = new TreeSet<>();
    Stream.<Entry>concat(changes.stream(), retrofits.stream())
        .flatMap(e -> e.citations().stream())
        .map(Citation::source)
        .forEach(keys::add);
    return keys;
  }
}
