package club.yearline.catalog;

import static java.util.Comparator.comparing;

import club.yearline.effectivity.Entry;
import club.yearline.effectivity.EntryKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** What revisions did to entries. */
@Component
@Transactional(readOnly = true)
public class History {

  private final Versions versions;
  private final Revisions revisions;

  History(Versions versions, Revisions revisions) {
    this.versions = versions;
    this.revisions = revisions;
  }

  /** Every version of an entry, oldest first; empty where there never was such an entry. */
  public List<VersionSpan> of(EntryKind kind, String key) {
    List<VersionSpan> spans = new ArrayList<>();
    versions.read(new EntryRef(kind, key), (version, entry) -> spans.add(version.span(entry)));
    spans.sort(comparing(VersionSpan::since));
    return List.copyOf(spans);
  }

  /**
   * What a revision did, ordered by kind and key.
   *
   * @throws UnknownRevision if there is no such revision
   */
  public List<EntryEdit> edits(int revision) {
    int newest = revisions.newest();
    if (revision < 1 || revision > newest) {
      throw new UnknownRevision(revision, newest);
    }
    Map<EntryRef, Entry> before = entries(Selection.endedBy(revision));
    Map<EntryRef, Entry> after = entries(Selection.begunBy(revision));
    Set<EntryRef> touched = new HashSet<>(before.keySet());
    touched.addAll(after.keySet());
    return touched.stream()
        .map(ref -> new EntryEdit(ref, before.get(ref), after.get(ref)))
        .sorted(comparing(EntryEdit::ref, byKindAndKey()))
        .toList();
  }

  private Map<EntryRef, Entry> entries(Selection selection) {
    Map<EntryRef, Entry> entries = new HashMap<>();
    versions.read(selection, (version, entry) -> entries.put(EntryRef.of(entry), entry));
    return entries;
  }

  private static Comparator<EntryRef> byKindAndKey() {
    return comparing(EntryRef::kind).thenComparing(EntryRef::key);
  }
}
