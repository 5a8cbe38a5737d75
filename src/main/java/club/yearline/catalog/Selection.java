package club.yearline.catalog;

import jakarta.persistence.Query;
import java.util.Map;

/**
 * Which versions to read: a condition on a version {@code v}.
 *
 * @param condition in the query language
 * @param parameters its parameters
 */
record Selection(String condition, Map<String, Object> parameters) {

  private static final String AT = "v.sinceRevision <= :at and :at < v.untilRevision";
  private static final String FROM = "v.sinceRevision <= :from and :from < v.untilRevision";

  /** The versions valid at one revision and not at another. */
  static Selection at(int revision, int butNotAt) {
    return new Selection(AT + " and not (" + FROM + ")", Map.of("at", revision, "from", butNotAt));
  }

  /** All versions of an entry. */
  static Selection of(long entryId) {
    return new Selection("v.entryId = :entry", Map.of("entry", entryId));
  }

  /** The versions that begin with a revision. */
  static Selection begunBy(int revision) {
    return new Selection("v.sinceRevision = :revision", Map.of("revision", revision));
  }

  /** The versions that end with a revision. */
  static Selection endedBy(int revision) {
    return new Selection("v.untilRevision = :revision", Map.of("revision", revision));
  }

  <Q extends Query> Q bind(Q query) {
    parameters.forEach(query::setParameter);
    return query;
  }
}
