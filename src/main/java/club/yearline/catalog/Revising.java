package club.yearline.catalog;

import static java.util.Comparator.comparing;

import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Picture;
import club.yearline.effectivity.Records;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;

/** Makes one state's records from another's. Records of a state are in the order of their keys. */
final class Revising {

  private Revising() {}

  /** The records without some entries, with others, and with these pictures. */
  static Records records(
      Records before,
      Set<EntryRef> without,
      Collection<? extends Entry> with,
      Collection<Picture> pictures) {
    List<Entry> entries = new ArrayList<>(before.size() + with.size());
    for (Entry entry : before.entries()) {
      if (without.isEmpty() || !without.contains(EntryRef.of(entry))) {
        entries.add(entry);
      }
    }
    entries.addAll(with);
    entries.sort(comparing(Entry::key));
    return Records.of(entries, pictures.stream().sorted(comparing(Picture::name)).toList());
  }
}
