package club.yearline.catalog;

import club.yearline.effectivity.Entry;
import club.yearline.effectivity.EntryKind;
import jakarta.persistence.EntityManager;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import org.springframework.stereotype.Repository;

/** All versions of all entries. */
@Repository
class Versions {

  private final EntityManager entityManager;
  private final Identities identities;

  Versions(EntityManager entityManager, Identities identities) {
    this.entityManager = entityManager;
    this.identities = identities;
  }

  /** Hands over the selected versions, kind by kind. */
  void read(Selection selection, BiConsumer<Version, Entry> to) {
    Sweep sweep = new Sweep(entityManager, identities, selection);
    for (Shelf shelf : Shelf.values()) {
      sweep.of(shelf, to);
    }
  }

  /** Hands over all versions of one entry. */
  void read(EntryRef ref, BiConsumer<Version, Entry> to) {
    identities
        .find(ref)
        .map(id -> new Sweep(entityManager, identities, Selection.of(id)))
        .ifPresent(sweep -> sweep.of(Shelf.of(ref.kind()), to));
  }

  /** The entries as they read at one revision, where they read otherwise at another. */
  List<Entry> at(int revision, int butNotAt) {
    List<Entry> entries = new ArrayList<>();
    read(Selection.at(revision, butNotAt), (version, entry) -> entries.add(entry));
    return entries;
  }

  /** The entries that have another version at one revision than at another, or none. */
  Set<EntryRef> gone(int at, int since) {
    Set<EntryRef> gone = new HashSet<>();
    for (Shelf shelf : Shelf.values()) {
      for (long id : entryIds(shelf, Selection.at(since, at))) {
        gone.add(new EntryRef(shelf.kind(), identities.key(id)));
      }
    }
    return gone;
  }

  /** Ends the open versions of some entries and begins those that others shall have. */
  void replace(Collection<EntryRef> ended, List<Entry> begun, int revision) {
    EntryIds ids = new EntryIds(identities);
    ids.assign(begun.stream().map(EntryRef::of).toList());
    Map<EntryKind, List<Long>> endedIds =
        ended.stream()
            .collect(
                Collectors.groupingBy(
                    EntryRef::kind,
                    Collectors.mapping(ref -> ids.id(ref.kind(), ref.key()), Collectors.toList())));
    endedIds.forEach((kind, closing) -> close(Shelf.of(kind), closing, revision));
    for (List<Entry> batch : Batches.of(begun)) {
      Batches.persist(
          entityManager,
          batch.stream().map(e -> Shelf.of(e.kind()).open(e, ids, revision)).toList());
    }
  }

  private List<Long> entryIds(Shelf shelf, Selection selection) {
    String query =
        "select v.entryId from %s v where %s"
            .formatted(shelf.versions().getSimpleName(), selection.condition());
    return selection.bind(entityManager.createQuery(query, Long.class)).getResultList();
  }

  /** In bulk, and before anything is inserted: only one version of an entry may be open. */
  private void close(Shelf shelf, List<Long> entryIds, int revision) {
    String update =
        "update %s v set v.untilRevision = :revision where v.untilRevision = :open and v.entryId in"
            + " :ids";
    for (List<Long> batch : Batches.of(entryIds)) {
      entityManager
          .createQuery(update.formatted(shelf.versions().getSimpleName()))
          .setParameter("revision", revision)
          .setParameter("open", VersionSpan.OPEN)
          .setParameter("ids", batch)
          .executeUpdate();
    }
  }
}
