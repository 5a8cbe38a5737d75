package club.yearline.effectivity;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The records by key, for checks; of records with one key, the first. */
final class Known {

  private final Map<String, Family> families;
  private final Map<String, Variant> variants;
  private final Map<String, Series> series;
  private final Map<String, Feature> features;
  private final Map<String, SourceEntry> sources;
  private final Set<String> pictures = new HashSet<>();

  Known(Records records) {
    families = byKey(records.families());
    variants = byKey(records.variants());
    series = byKey(records.series());
    features = byKey(records.features());
    sources = byKey(records.sources());
    records.pictures().forEach(p -> pictures.add(p.name()));
  }

  private static <T extends Entry> Map<String, T> byKey(List<T> entries) {
    Map<String, T> map = new HashMap<>();
    entries.forEach(e -> map.putIfAbsent(e.key(), e));
    return map;
  }

  boolean family(String key) {
    return families.containsKey(key);
  }

  boolean source(String key) {
    return sources.containsKey(key);
  }

  boolean picture(String name) {
    return pictures.contains(name);
  }

  Optional<Variant> variant(String key) {
    return Optional.ofNullable(variants.get(key));
  }

  Optional<Feature> feature(String key) {
    return Optional.ofNullable(features.get(key));
  }

  Optional<Series> series(@Nullable String key) {
    return Optional.ofNullable(key).map(series::get);
  }

  /** The serial, where its series is known and the text can be read. */
  Optional<Serial> serial(@Nullable String seriesKey, @Nullable String text) {
    return text == null || text.strip().length() > SerialText.MAX_LENGTH
        ? Optional.empty()
        : series(seriesKey).flatMap(s -> s.read(text));
  }
}
