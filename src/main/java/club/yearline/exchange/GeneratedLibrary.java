package club.yearline.exchange;

import club.yearline.citation.Citation;
import club.yearline.citation.Source;
import club.yearline.citation.SourceKind;
import club.yearline.citation.Stance;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Records;
import club.yearline.effectivity.SourceEntry;
import java.util.ArrayList;
import java.util.List;

/**
 * Invents what the families share: the features, and handbooks that describe them. Always the same
 * number of rows, so that a thousand families make a round million.
 */
final class GeneratedLibrary {

  private static final int ROWS = 1000;
  private static final int HANDBOOKS = 40;

  private final List<Feature> features = new ArrayList<>();
  private int citations;

  GeneratedLibrary(List<Feature> bare) {
    int rows = HANDBOOKS + bare.stream().mapToInt(f -> 1 + f.values().size()).sum();
    int left = ROWS - rows;
    for (int i = 0; i < bare.size(); i++) {
      int share = left / bare.size() + (i < left % bare.size() ? 1 : 0);
      features.add(described(bare.get(i), share));
    }
  }

  /** The features, with their citations. */
  List<Feature> features() {
    return features;
  }

  Records make() {
    List<Entry> entries = new ArrayList<>(features);
    for (int i = 0; i < HANDBOOKS; i++) {
      entries.add(handbook(i));
    }
    return Records.of(entries, List.of());
  }

  private Feature described(Feature bare, int count) {
    List<Citation> cited = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      String locator = "p. " + (1 + citations);
      String key = String.format("common-citation-%03d", citations);
      String source = key(citations % HANDBOOKS);
      cited.add(new Citation(key, null, source, locator, Stance.SUPPORTS, null));
      citations++;
    }
    return new Feature(
        bare.key(),
        bare.name(),
        bare.chapter(),
        bare.kindOfValue(),
        bare.unit(),
        bare.visibility(),
        bare.exchange(),
        bare.description(),
        bare.values(),
        cited);
  }

  /** Their keys come before those of the families, as their rows do. */
  private static String key(int handbook) {
    return String.format("common-handbook-%02d", handbook);
  }

  private static SourceEntry handbook(int i) {
    return new SourceEntry(
        new Source(
            key(i),
            SourceKind.BOOK,
            "Invented handbook " + (i + 1),
            "Berg, Ulla",
            "Invented Press",
            null,
            "197X",
            null,
            null,
            null));
  }
}
