package club.yearline.effectivity;

import club.yearline.citation.Citation;
import club.yearline.citation.SourceKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One state of a catalogue, compiled for questions. Immutable and safe for any number of threads;
 * families are compiled when first asked about, each once.
 */
public final class Catalogue {

  /** A catalogue with nothing in it. */
  public static final Catalogue EMPTY = of(Records.NONE);

  private final Records records;
  private final Map<String, Compiled> families = new LinkedHashMap<>();
  private final Map<String, Variant> variants;
  private final Map<String, Series> series;
  private final Map<String, Feature> features;
  private final Map<String, Change> changes;
  private final Map<String, Retrofit> retrofits;
  private final Map<String, SourceEntry> sources;
  private final Map<String, Picture> pictures = new HashMap<>();
  private final Map<String, List<Change>> changesByFeature = new HashMap<>();
  private final Map<String, List<Series>> seriesByPrefix = new HashMap<>();

  private Catalogue(Records records, Map<String, Compiled> previous) {
    this.records = records;
    this.variants = byKey(records.variants());
    this.series = byKey(records.series());
    this.features = byKey(records.features());
    this.changes = byKey(records.changes());
    this.retrofits = byKey(records.retrofits());
    this.sources = byKey(records.sources());
    records.pictures().forEach(p -> pictures.put(p.name(), p));
    for (Change change : records.changes()) {
      changesByFeature.computeIfAbsent(change.feature(), k -> new ArrayList<>()).add(change);
    }
    for (Series one : records.series()) {
      seriesByPrefix.computeIfAbsent(one.barePrefix(), k -> new ArrayList<>()).add(one);
    }
    FamilySlice.of(records)
        .forEach(
            (key, slice) -> {
              Compiled old = previous.get(key);
              families.put(key, old != null && old.isOf(slice) ? old : new Compiled(slice));
            });
  }

  /**
   * Makes a catalogue of records that have no error among their {@link Findings}.
   *
   * @throws IllegalArgumentException where a record refers to something that does not exist
   */
  public static Catalogue of(Records records) {
    return new Catalogue(records, Map.of());
  }

  /** Makes the catalogue that follows this one; families that did not change stay compiled. */
  public Catalogue next(Records changed) {
    return new Catalogue(changed, families);
  }

  /** The entries as recorded. */
  public Records records() {
    return records;
  }

  /** The family with the key. */
  public Optional<Family> family(String key) {
    return Optional.ofNullable(families.get(key)).map(c -> c.slice().family());
  }

  /** The variants of a family, by first year of production, then key. */
  public List<Variant> variantsOf(String family) {
    Compiled compiled = families.get(family);
    return compiled == null
        ? List.of()
        : compiled.slice().variants().stream()
            .sorted(Comparator.comparingInt(Catalogue::firstYear).thenComparing(Variant::key))
            .toList();
  }

  private static int firstYear(Variant variant) {
    return variant.runs().stream()
        .mapToInt(ProductionRun::firstYear)
        .min()
        .orElse(Integer.MAX_VALUE);
  }

  /** The series of a family. */
  public List<Series> seriesOf(String family) {
    Compiled compiled = families.get(family);
    return compiled == null ? List.of() : List.copyOf(compiled.slice().series());
  }

  /** The variant with the key. */
  public Optional<Variant> variant(String key) {
    return Optional.ofNullable(variants.get(key));
  }

  /** The series with the key. */
  public Optional<Series> series(String key) {
    return Optional.ofNullable(series.get(key));
  }

  /** The feature with the key. */
  public Optional<Feature> feature(String key) {
    return Optional.ofNullable(features.get(key));
  }

  /** The change with the key. */
  public Optional<Change> change(String key) {
    return Optional.ofNullable(changes.get(key));
  }

  /** The changes of a feature, of all variants, in the order of the records. */
  public List<Change> changesOf(String feature) {
    return List.copyOf(changesByFeature.getOrDefault(feature, List.of()));
  }

  /** The retrofit with the key. */
  public Optional<Retrofit> retrofit(String key) {
    return Optional.ofNullable(retrofits.get(key));
  }

  /** The source with the key. */
  public Optional<SourceEntry> source(String key) {
    return Optional.ofNullable(sources.get(key));
  }

  /** Whether a retrofit is mandatory: an airworthiness directive speaks for it. */
  public boolean isMandatory(Retrofit retrofit) {
    return retrofit.citations().stream()
        .filter(Citation::supports)
        .map(c -> sources.get(c.source()))
        .anyMatch(s -> s != null && s.source().kind() == SourceKind.AIRWORTHINESS_DIRECTIVE);
  }

  /** The picture with the file name. */
  public Optional<Picture> picture(String name) {
    return Optional.ofNullable(pictures.get(name));
  }

  /** The compiled variant with the key. */
  public Optional<VariantModel> model(String variant) {
    return variant(variant).map(v -> compiled(v.family()).variant(variant));
  }

  /**
   * Every series that a text fits, by series key, with the blocks that hold the serial or are
   * nearest to it.
   *
   * @throws IllegalArgumentException if the text has more than {@value SerialText#MAX_LENGTH}
   *     characters
   */
  public List<SerialMatch> read(String text) {
    SerialText typed = SerialText.of(text);
    String bare = typed.bare();
    List<SerialMatch> matches = new ArrayList<>();
    for (int length = 0; length <= bare.length(); length++) {
      for (Series one : seriesByPrefix.getOrDefault(bare.substring(0, length), List.of())) {
        one.read(typed).ifPresent(serial -> matches.add(match(one, serial)));
      }
    }
    matches.sort(Comparator.comparing(m -> m.series().key()));
    return matches;
  }

  private SerialMatch match(Series of, Serial serial) {
    SeriesBlocks blocks = compiled(of.family()).blocksOf(of);
    List<SerialBlock> holding = blocks.holding(serial).stream().map(Block::entry).toList();
    if (!holding.isEmpty()) {
      return new SerialMatch(of, serial, holding, null, null);
    }
    return new SerialMatch(
        of, serial, holding, entry(blocks.below(serial)), entry(blocks.above(serial)));
  }

  private static @Nullable SerialBlock entry(Optional<Block> block) {
    return block.map(Block::entry).orElse(null);
  }

  /** Finds the position that a question points to, or says why there is none. */
  public Located locate(Question question) {
    return new Locator(this).locate(question);
  }

  /** The expected configuration: one answer for each feature of the position's variant. */
  public List<Answer> expected(Position position) {
    return model(position.variant().key()).orElseThrow().expected(position);
  }

  private FamilyModel compiled(String family) {
    Compiled compiled = families.get(family);
    if (compiled == null) {
      throw new IllegalArgumentException("Unknown family: " + family);
    }
    return compiled.model();
  }

  private static <T extends Entry> Map<String, T> byKey(List<T> entries) {
    Map<String, T> map = new HashMap<>(entries.size() * 2);
    for (T entry : entries) {
      map.put(entry.key(), entry);
    }
    return map;
  }

  /** A family's entries and, once asked for, its model. */
  private static final class Compiled {
    private final FamilySlice slice;
    private volatile @Nullable FamilyModel model;

    Compiled(FamilySlice slice) {
      this.slice = slice;
    }

    FamilySlice slice() {
      return slice;
    }

    boolean isOf(FamilySlice other) {
      return slice.equals(other);
    }

    FamilyModel model() {
      FamilyModel made = model;
      if (made == null) {
        synchronized (this) {
          made = model;
          if (made == null) {
            made = new FamilyModel(slice);
            model = made;
          }
        }
      }
      return made;
    }
  }
}
