package club.yearline.effectivity;

import club.yearline.citation.Source;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One family, compiled. */
final class FamilyModel {

  private static final Comparator<Feature> BY_CHAPTER =
      Comparator.comparing(Feature::chapter)
          .thenComparing(Feature::name)
          .thenComparing(Feature::key);

  private final FamilySlice slice;
  private final Map<String, Series> series = new HashMap<>();
  private final Map<String, Source> sources = new HashMap<>();
  private final Map<String, SeriesBlocks> blocks = new HashMap<>();
  private final Map<String, VariantModel> variants = new LinkedHashMap<>();

  FamilyModel(FamilySlice slice) {
    this.slice = slice;
    slice.series().forEach(s -> series.put(s.key(), s));
    slice.sources().forEach(s -> sources.put(s.key(), s.source()));
    compileBlocks();
    compileVariants();
  }

  /** The compiled variant. */
  @Nullable VariantModel variant(String key) {
    return variants.get(key);
  }

  /** The blocks of one of the family's series. */
  SeriesBlocks blocksOf(Series wanted) {
    return blocks.getOrDefault(wanted.key(), new SeriesBlocks(List.of()));
  }

  private void compileBlocks() {
    Map<String, Long> highest = highestNamed();
    Map<String, List<Block>> bySeries = new HashMap<>();
    for (SerialBlock block : slice.blocks()) {
      Series of = known(block.series());
      bySeries
          .computeIfAbsent(of.key(), k -> new ArrayList<>())
          .add(Block.of(block, of, highest.getOrDefault(of.key(), 0L)));
    }
    bySeries.forEach((key, list) -> blocks.put(key, new SeriesBlocks(list)));
  }

  /** The highest ordinal that any record names in each series. */
  private Map<String, Long> highestNamed() {
    Map<String, Long> highest = new HashMap<>();
    for (SerialBlock block : slice.blocks()) {
      name(highest, block.series(), block.firstSerial());
      name(highest, block.series(), block.lastSerial());
    }
    for (Change change : slice.changes()) {
      for (CutIn cutIn : change.cutIns()) {
        name(highest, cutIn.series(), cutIn.firstSerial());
        name(highest, cutIn.series(), cutIn.settledSerial());
      }
    }
    for (Retrofit retrofit : slice.retrofits()) {
      name(highest, retrofit.series(), retrofit.firstSerial());
      name(highest, retrofit.series(), retrofit.lastSerial());
    }
    return highest;
  }

  private void name(Map<String, Long> highest, @Nullable String key, @Nullable String serial) {
    if (key != null && serial != null && series.containsKey(key)) {
      highest.merge(key, Block.readable(known(key), serial).ordinal(), Math::max);
    }
  }

  private Series known(String key) {
    Series found = series.get(key);
    if (found == null) {
      throw new IllegalArgumentException(
          "Series " + key + " is not of family " + slice.family().key());
    }
    return found;
  }

  private void compileVariants() {
    Map<String, Integer> latest = latestNamedYears();
    Map<String, Map<String, List<Change>>> byVariant = new HashMap<>();
    for (Change change : slice.changes()) {
      for (CutIn cutIn : change.cutIns()) {
        byVariant
            .computeIfAbsent(cutIn.variant(), k -> new HashMap<>())
            .computeIfAbsent(change.feature(), k -> new ArrayList<>())
            .add(change);
      }
    }
    for (Variant variant : slice.variants()) {
      Production production =
          new Production(variant, blocks, latest.getOrDefault(variant.key(), Integer.MIN_VALUE));
      Map<String, List<Change>> changes = byVariant.getOrDefault(variant.key(), Map.of());
      variants.put(
          variant.key(),
          new VariantModel(
              slice.family(), variant, production, timelines(variant, production, changes)));
    }
  }

  private Map<String, Timeline> timelines(
      Variant variant, Production production, Map<String, List<Change>> changes) {
    Map<String, List<Retrofit>> retrofits = new HashMap<>();
    slice.retrofits().stream()
        .filter(r -> r.variant().equals(variant.key()))
        .sorted(Comparator.comparing(Retrofit::key))
        .forEach(r -> retrofits.computeIfAbsent(r.feature(), k -> new ArrayList<>()).add(r));
    Map<String, Timeline> timelines = new LinkedHashMap<>();
    slice.features().stream()
        .filter(f -> changes.containsKey(f.key()))
        .sorted(BY_CHAPTER)
        .forEach(
            feature ->
                timelines.put(
                    feature.key(),
                    new Timeline(
                        variant,
                        feature,
                        steps(variant, production, changes.getOrDefault(feature.key(), List.of())),
                        production,
                        retrofits.getOrDefault(feature.key(), List.of()),
                        sources)));
    return timelines;
  }

  private List<Step> steps(Variant variant, Production production, List<Change> changes) {
    List<Step> steps = new ArrayList<>();
    for (Change change : changes) {
      CutIn cutIn = change.cutIn(variant.key()).orElseThrow();
      String key = cutIn.series();
      steps.add(Step.of(change, cutIn, key == null ? null : known(key), production));
    }
    return steps;
  }

  /** The latest year that any record names, for each variant. */
  private Map<String, Integer> latestNamedYears() {
    Map<String, Integer> latest = new HashMap<>();
    for (Variant variant : slice.variants()) {
      variant.runs().forEach(r -> name(latest, variant.key(), r.firstYear(), r.lastYear()));
      variant.names().forEach(n -> name(latest, variant.key(), n.firstYear(), n.lastYear()));
    }
    slice.blocks().forEach(b -> name(latest, b.variant(), b.year(), null));
    slice.retrofits().forEach(r -> name(latest, r.variant(), r.firstYear(), r.lastYear()));
    slice.changes().stream()
        .flatMap(c -> c.cutIns().stream())
        .forEach(c -> name(latest, c.variant(), c.firstYear(), c.settledYear()));
    return latest;
  }

  private static void name(
      Map<String, Integer> latest, String variant, @Nullable Integer one, @Nullable Integer other) {
    if (one != null) {
      latest.merge(variant, one, Math::max);
    }
    if (other != null) {
      latest.merge(variant, other, Math::max);
    }
  }
}
