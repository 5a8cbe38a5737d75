package club.yearline.exchange;

import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Records;
import java.util.ArrayList;
import java.util.List;

/** What the command {@code generate} writes, without the way over files. */
public final class GeneratedRecords {

  private static final long SEED = 1;

  private GeneratedRecords() {}

  /** The entries of a catalogue of so many families; each variant has 60 features. */
  public static Records of(int families) {
    GeneratedLibrary library = new GeneratedLibrary(new GeneratedFeatures(SEED).make());
    List<Feature> features = library.features();
    List<Entry> entries = new ArrayList<>(library.make().entries());
    for (int i = 0; i < families; i++) {
      entries.addAll(new GeneratedFamily(SEED, i, features).make().entries());
    }
    return Records.of(entries, List.of());
  }
}
