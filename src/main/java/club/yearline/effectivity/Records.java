package club.yearline.effectivity;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * The entries of a catalogue as recorded, consistent or not: what an import has read, what a
 * revision holds, what a correction would make. {@link Findings} says what is wrong with them;
 * {@link Catalogue} computes on them.
 */
public record Records(
    List<Family> families,
    List<Variant> variants,
    List<Series> series,
    List<SerialBlock> blocks,
    List<Feature> features,
    List<Change> changes,
    List<Retrofit> retrofits,
    List<SourceEntry> sources,
    List<Picture> pictures) {

  /** Nothing recorded. */
  public static final Records NONE = of(List.of(), List.of());

  public Records {
    families = List.copyOf(families);
    variants = List.copyOf(variants);
    series = List.copyOf(series);
    blocks = List.copyOf(blocks);
    features = List.copyOf(features);
    changes = List.copyOf(changes);
    retrofits = List.copyOf(retrofits);
    sources = List.copyOf(sources);
    pictures = List.copyOf(pictures);
  }

  /** Sorts mixed entries into their kinds, keeping their order. */
  public static Records of(Collection<? extends Entry> entries, Collection<Picture> pictures) {
    return new Records(
        only(entries, Family.class),
        only(entries, Variant.class),
        only(entries, Series.class),
        only(entries, SerialBlock.class),
        only(entries, Feature.class),
        only(entries, Change.class),
        only(entries, Retrofit.class),
        only(entries, SourceEntry.class),
        List.copyOf(pictures));
  }

  /** All entries, kind by kind. */
  public List<Entry> entries() {
    List<Entry> all = new ArrayList<>(size());
    all.addAll(families);
    all.addAll(variants);
    all.addAll(series);
    all.addAll(blocks);
    all.addAll(features);
    all.addAll(changes);
    all.addAll(retrofits);
    all.addAll(sources);
    return all;
  }

  /** The number of entries. */
  public int size() {
    return families.size()
        + variants.size()
        + series.size()
        + blocks.size()
        + features.size()
        + changes.size()
        + retrofits.size()
        + sources.size();
  }

  private static <T extends Entry> List<T> only(
      Collection<? extends Entry> entries, Class<T> kind) {
    return entries.stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
