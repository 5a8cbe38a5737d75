package club.yearline.browse;

import club.yearline.catalog.EntryEdit;
import club.yearline.catalog.EntryRef;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Records;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What differs between the entries of two states. */
final class Edits {

  private Edits() {}

  /** Each entry that one state has and the other has not, or reads otherwise; by kind and key. */
  static List<EntryEdit> between(Records before, Records after) {
    Map<EntryRef, Entry> left = new HashMap<>();
    before.entries().forEach(e -> left.put(EntryRef.of(e), e));
    List<EntryEdit> edits = new ArrayList<>();
    for (Entry entry : after.entries()) {
      EntryRef ref = EntryRef.of(entry);
      Entry old = left.remove(ref);
      if (!entry.equals(old)) {
        edits.add(new EntryEdit(ref, old, entry));
      }
    }
    left.forEach((ref, old) -> edits.add(new EntryEdit(ref, old, null)));
    edits.sort(
        Comparator.comparing((EntryEdit e) -> e.ref().kind()).thenComparing(e -> e.ref().key()));
    return edits;
  }
}
