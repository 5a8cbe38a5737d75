package club.yearline.catalog;

import club.yearline.effectivity.Change;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.EntryKind;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Retrofit;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.SourceEntry;
import club.yearline.effectivity.Variant;

/** Where the versions of each kind of entry are kept. */
enum Shelf {
  FAMILY(FamilyVersion.class, (e, ids, since) -> FamilyVersion.of((Family) e, ids, since)),
  VARIANT(VariantVersion.class, (e, ids, since) -> VariantVersion.of((Variant) e, ids, since)),
  SERIES(SeriesVersion.class, (e, ids, since) -> SeriesVersion.of((Series) e, ids, since)),
  SERIAL_BLOCK(
      SerialBlockVersion.class,
      (e, ids, since) -> SerialBlockVersion.of((SerialBlock) e, ids, since)),
  FEATURE(FeatureVersion.class, (e, ids, since) -> FeatureVersion.of((Feature) e, ids, since)),
  CHANGE(ChangeVersion.class, (e, ids, since) -> ChangeVersion.of((Change) e, ids, since)),
  RETROFIT(RetrofitVersion.class, (e, ids, since) -> RetrofitVersion.of((Retrofit) e, ids, since)),
  SOURCE(SourceVersion.class, (e, ids, since) -> SourceVersion.of((SourceEntry) e, ids, since));

  private final Class<? extends Version> versions;
  private final Opening opening;

  Shelf(Class<? extends Version> versions, Opening opening) {
    this.versions = versions;
    this.opening = opening;
  }

  static Shelf of(EntryKind kind) {
    return valueOf(kind.name());
  }

  EntryKind kind() {
    return EntryKind.valueOf(name());
  }

  Class<? extends Version> versions() {
    return versions;
  }

  /** A new open version of an entry of this kind. */
  Version open(Entry entry, EntryIds ids, int since) {
    return opening.open(entry, ids, since);
  }

  private interface Opening {
    Version open(Entry entry, EntryIds ids, int since);
  }
}
