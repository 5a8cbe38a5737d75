package club.yearline.catalog;

import jakarta.persistence.EntityManager;
import java.util.List;

/** Work in pieces, so that memory and statements stay small however much there is to do. */
final class Batches {

  private static final int SIZE = 500;

  private Batches() {}

  /**
   * Inserts rows and lets go of them. They are detached one by one because clearing the persistence
   * context would take the caller's own entities along.
   */
  static void persist(EntityManager entityManager, List<?> rows) {
    for (List<?> batch : of(rows)) {
      batch.forEach(entityManager::persist);
      entityManager.flush();
      batch.forEach(entityManager::detach);
    }
  }

  /** The rows in order, cut into batches. */
  static <T> List<List<T>> of(List<T> rows) {
    return java.util.stream.IntStream.iterate(0, from -> from < rows.size(), from -> from + SIZE)
        .mapToObj(from -> rows.subList(from, Math.min(from + SIZE, rows.size())))
        .toList();
  }
}
