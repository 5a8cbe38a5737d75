package club.yearline.news;

import club.yearline.catalog.EntryEdit;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Retrofit;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.Variant;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Finds what a revision touches. An edit touches the entry itself and what it is about: a change
 * the feature and the variants it has cut-ins for, a variant its family, and so on; a feature the
 * variants that it has cut-ins for. An edited source touches nothing that can be watched.
 */
final class Touched {

  private final Catalogue before;
  private final Catalogue after;
  private final Set<Watched> all = new LinkedHashSet<>();

  private Touched(Catalogue before, Catalogue after) {
    this.before = before;
    this.after = after;
  }

  /** Everything that can be watched and that the edits touch. */
  static Set<Watched> by(List<EntryEdit> edits, Catalogue before, Catalogue after) {
    Touched touched = new Touched(before, after);
    for (EntryEdit edit : edits) {
      touched.add(edit.before(), before);
      touched.add(edit.after(), after);
    }
    return touched.all;
  }

  /** An entry as it read before counts where it belonged then. */
  private void add(@Nullable Entry entry, Catalogue in) {
    if (entry instanceof Family family) {
      all.add(Watched.family(family.key()));
    } else if (entry instanceof Variant variant) {
      all.add(Watched.variant(variant.key()));
      all.add(Watched.family(variant.family()));
    } else if (entry instanceof Series series) {
      all.add(Watched.family(series.family()));
    } else if (entry instanceof SerialBlock block) {
      variant(block.variant());
    } else if (entry instanceof Feature feature) {
      all.add(Watched.feature(feature.key()));
      in.changesOf(feature.key()).forEach(this::variants);
    } else if (entry instanceof Change change) {
      all.add(Watched.feature(change.feature()));
      variants(change);
    } else if (entry instanceof Retrofit retrofit) {
      all.add(Watched.feature(retrofit.feature()));
      variant(retrofit.variant());
    }
  }

  private void variants(Change change) {
    change.cutIns().forEach(cutIn -> variant(cutIn.variant()));
  }

  private void variant(String key) {
    all.add(Watched.variant(key));
    before.variant(key).ifPresent(v -> all.add(Watched.family(v.family())));
    after.variant(key).ifPresent(v -> all.add(Watched.family(v.family())));
  }
}
