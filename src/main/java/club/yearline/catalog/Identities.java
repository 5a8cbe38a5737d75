package club.yearline.catalog;

import club.yearline.effectivity.EntryKind;
import jakarta.persistence.EntityManager;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.stereotype.Repository;

/** The identities of all entries that were ever published. */
@Repository
class Identities {

  private final EntityManager entityManager;

  /**
   * Keys by number. An identity never changes, and a number is never used twice, so what is known
   * stays true; a number of a publication that was rolled back is never asked for.
   */
  private final Map<Long, String> keys = new ConcurrentHashMap<>();

  Identities(EntityManager entityManager) {
    this.entityManager = entityManager;
  }

  /** The key of the entry with this number. */
  String key(long id) {
    String known = keys.get(id);
    if (known != null) {
      return known;
    }
    learnAll();
    return Optional.ofNullable(keys.get(id))
        .orElseThrow(() -> new IllegalStateException("No entry has the number " + id));
  }

  /** The number of an entry; empty where there never was one. */
  Optional<Long> find(EntryRef ref) {
    return entityManager
        .createQuery(
            "select i.id from Identity i where i.kind = :kind and i.key = :key", Long.class)
        .setParameter("kind", ref.kind())
        .setParameter("key", ref.key())
        .getResultStream()
        .findFirst();
  }

  /** The numbers of all entries of a kind, by key. */
  Map<String, Long> ofKind(EntryKind kind) {
    Map<String, Long> ids = new HashMap<>();
    entityManager
        .createQuery("select i.id, i.key from Identity i where i.kind = :kind", Object[].class)
        .setParameter("kind", kind)
        .getResultStream()
        .forEach(row -> ids.put((String) row[1], (Long) row[0]));
    return ids;
  }

  /** Gives numbers to new entries. */
  List<Identity> add(Collection<EntryRef> refs) {
    List<Identity> added = refs.stream().map(Identity::of).toList();
    Batches.persist(entityManager, added);
    return added;
  }

  private void learnAll() {
    entityManager
        .createQuery("select i.id, i.key from Identity i", Object[].class)
        .getResultStream()
        .forEach(row -> keys.putIfAbsent((Long) row[0], (String) row[1]));
  }
}
