package club.yearline.catalog;

import club.yearline.effectivity.Entry;
import club.yearline.effectivity.EntryKind;

/** Names an entry, whatever its versions say. */
public record EntryRef(EntryKind kind, String key) {

  /** The name of the given entry. */
  public static EntryRef of(Entry entry) {
    return new EntryRef(entry.kind(), entry.key());
  }

  @Override
  public String toString() {
    return kind.code() + " '" + key + "'";
  }
}
