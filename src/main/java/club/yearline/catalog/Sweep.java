package club.yearline.catalog;

import club.yearline.citation.Citation;
import club.yearline.effectivity.Entry;
import jakarta.persistence.EntityManager;
import jakarta.persistence.TypedQuery;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Stream;
import org.hibernate.jpa.HibernateHints;
import org.jspecify.annotations.Nullable;

/**
 * One sweep over the versions of a selection. Versions and each kind of part are read as streams in
 * the order of the versions and merged, so that a million rows take few queries and little memory.
 */
final class Sweep {

  private final EntityManager entityManager;
  private final Identities identities;
  private final Selection selection;
  private final Map<String, String> texts = new HashMap<>();
  private final Map<String, PartCursor> cursors = new HashMap<>();

  Sweep(EntityManager entityManager, Identities identities, Selection selection) {
    this.entityManager = entityManager;
    this.identities = identities;
    this.selection = selection;
  }

  /** Hands over each selected version of a kind with what it says. */
  void of(Shelf shelf, BiConsumer<Version, Entry> to) {
    try (Stream<? extends Version> versions = versions(shelf)) {
      versions.forEach(
          version -> {
            to.accept(version, version.toEntry(this));
            entityManager.detach(version);
          });
    } finally {
      cursors.values().forEach(PartCursor::close);
      cursors.clear();
    }
  }

  /** The key of an entry, given its number. */
  String key(long id) {
    return identities.key(id);
  }

  @Nullable String keyOrNull(@Nullable Long id) {
    return id == null ? null : identities.key(id);
  }

  /** The text, kept once however often it is read. */
  String text(String read) {
    String kept = texts.putIfAbsent(read, read);
    return kept == null ? read : kept;
  }

  @Nullable String textOrNull(@Nullable String read) {
    return read == null ? null : text(read);
  }

  List<Citation> citations(Version version) {
    return parts(version, "citations", CitationPart.class, c -> c.toCitation(this));
  }

  /** The parts of a version, in their recorded order. */
  <P, T> List<T> parts(Version version, String role, Class<P> type, Function<P, T> to) {
    return cursors
        .computeIfAbsent(role, r -> new PartCursor(rows(version.getClass(), r)))
        .of(version.id())
        .map(part -> to.apply(type.cast(part)))
        .toList();
  }

  private Stream<? extends Version> versions(Shelf shelf) {
    return stream(
        shelf.versions(),
        "select v from %s v where %s order by v.id"
            .formatted(shelf.versions().getSimpleName(), selection.condition()));
  }

  private Stream<Object[]> rows(Class<? extends Version> versions, String role) {
    return stream(
        Object[].class,
        "select v.id, p from %s v join v.%s p where %s order by v.id, index(p)"
            .formatted(versions.getSimpleName(), role, selection.condition()));
  }

  private <T> Stream<T> stream(Class<T> type, String query) {
    TypedQuery<T> typed = entityManager.createQuery(query, type);
    return selection.bind(typed).setHint(HibernateHints.HINT_READ_ONLY, true).getResultStream();
  }
}
