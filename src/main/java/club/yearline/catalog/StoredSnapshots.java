package club.yearline.catalog;

import club.yearline.effectivity.Records;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * States of the catalogue as stored, read as differences from a state at hand, so that they share
 * what did not change between the two.
 */
@Component
@Transactional(readOnly = true)
class StoredSnapshots {

  private final Revisions revisions;
  private final Versions versions;
  private final Pictures pictures;

  StoredSnapshots(Revisions revisions, Versions versions, Pictures pictures) {
    this.revisions = revisions;
    this.versions = versions;
    this.pictures = pictures;
  }

  /**
   * The newest state; the one at hand where there is none newer. Never sees what the caller's own
   * transaction has yet to commit.
   */
  @Transactional(readOnly = true, propagation = Propagation.REQUIRES_NEW)
  public Snapshot newest(Snapshot known) {
    int newest = revisions.newest();
    return newest <= known.number() ? known : at(newest, known);
  }

  /** The state at a revision that is known to exist, newer or older than the one at hand. */
  public Snapshot at(int revision, Snapshot known) {
    if (revision == known.number()) {
      return known;
    }
    if (revision == 0) {
      return Snapshot.NONE;
    }
    Records records =
        Revising.records(
            known.catalogue().records(),
            versions.gone(revision, known.number()),
            versions.at(revision, known.number()),
            pictures.at(revision));
    return new Snapshot(
        revisions.findByNumber(revision).orElseThrow().toRevision(),
        known.catalogue().next(records));
  }
}
