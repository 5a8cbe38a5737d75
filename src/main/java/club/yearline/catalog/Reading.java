package club.yearline.catalog;

import club.yearline.effectivity.Catalogue;
import org.jspecify.annotations.Nullable;

/**
 * The state of the catalogue that one request reads: the newest, or the one that {@code ?rev=N}
 * names. Controllers take it as a parameter.
 *
 * @param snapshot the state
 * @param asked the revision asked for; null where the newest is read
 */
public record Reading(Snapshot snapshot, @Nullable Integer asked) {

  /** The catalogue to answer from. */
  public Catalogue catalogue() {
    return snapshot.catalogue();
  }

  /** Number of the revision read. */
  public int revision() {
    return snapshot.number();
  }

  /**
   * Whether the address names the revision, so that the page never changes again and carries the
   * banner; that is so for the newest revision too, which will not stay the newest.
   */
  public boolean fixed() {
    return asked != null;
  }

  /**
   * A link to another page of the same reading: a page at a revision links to pages at that
   * revision.
   *
   * @param path path with or without a query
   */
  public String link(String path) {
    return asked == null ? path : path + (path.indexOf('?') < 0 ? "?rev=" : "&rev=") + asked;
  }
}
