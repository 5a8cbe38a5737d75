package club.yearline.catalog;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.SerialBlock;
import java.util.Optional;

/** The whole catalogue as one revision has it. Immutable. */
public record Snapshot(Revision revision, Catalogue catalogue) {

  /** Before anything is published. */
  static final Snapshot NONE = new Snapshot(Revision.NONE, Catalogue.EMPTY);

  /** The number of its revision. */
  public int number() {
    return revision.number();
  }

  /** An entry as recorded; empty where there is none. */
  public Optional<Entry> entry(EntryRef ref) {
    String key = ref.key();
    Optional<? extends Entry> entry =
        switch (ref.kind()) {
          case FAMILY -> catalogue.family(key);
          case VARIANT -> catalogue.variant(key);
          case SERIES -> catalogue.series(key);
          case SERIAL_BLOCK -> block(key);
          case FEATURE -> catalogue.feature(key);
          case CHANGE -> catalogue.change(key);
          case RETROFIT -> catalogue.retrofit(key);
          case SOURCE -> catalogue.source(key);
        };
    return entry.map(Entry.class::cast);
  }

  private Optional<SerialBlock> block(String key) {
    return catalogue.records().blocks().stream().filter(b -> b.key().equals(key)).findFirst();
  }
}
