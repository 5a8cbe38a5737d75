package club.yearline.catalog;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Finding;
import club.yearline.effectivity.Findings;
import club.yearline.effectivity.Records;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Publishes editions, one revision each. */
@Component
public class Publication {

  private final Revisions revisions;
  private final Versions versions;
  private final Pictures pictures;
  private final Snapshots snapshots;
  private final ApplicationEventPublisher events;

  Publication(
      Revisions revisions,
      Versions versions,
      Pictures pictures,
      Snapshots snapshots,
      ApplicationEventPublisher events) {
    this.revisions = revisions;
    this.versions = versions;
    this.pictures = pictures;
    this.snapshots = snapshots;
    this.events = events;
  }

  /**
   * Publishes an edition that was made for a certain state, if that is still the newest.
   *
   * @param onto number of the newest revision as the edition knows it
   * @throws CatalogueMoved if something else was published since
   * @throws RefusedPublication if the resulting records have errors
   */
  @Transactional
  public Revision publish(Edition edition, int onto) {
    Revision revision = publish(edition);
    if (revision.number() != onto + 1) {
      throw new CatalogueMoved(onto, revision.number() - 1);
    }
    return revision;
  }

  /**
   * Publishes an edition as the next revision, wholly or not at all. Takes part in the caller's
   * transaction where there is one; the new head is seen once that is committed.
   *
   * @throws RefusedPublication if the resulting records have errors
   * @throws IllegalArgumentException if the edition withdraws what is not published
   */
  @Transactional
  public Revision publish(Edition edition) {
    return publish(edition, Records.NONE);
  }

  /**
   * The same for records that have been checked already, which need not be checked again where the
   * edition makes just these: looking through a large catalogue takes seconds.
   *
   * @param sound records without errors
   */
  @Transactional
  public Revision publish(Edition edition, Records sound) {
    revisions.advance();
    int number = revisions.newest();
    Catalogue before = snapshots.before(number).catalogue();
    Amendment amendment = Amendment.of(edition, before.records());
    if (!amendment.after().equals(sound)) {
      refuseErrors(Findings.in(amendment.after()));
    }
    Revision revision = revisions.saveAndFlush(stored(edition, number)).toRevision();
    versions.replace(amendment.ended(), amendment.begun(), number);
    pictures.publish(edition, before.records().pictures(), number);
    Snapshot after = new Snapshot(revision, before.next(amendment.after()));
    events.publishEvent(new Published(after, before, amendment.edits()));
    return revision;
  }

  private static void refuseErrors(List<Finding> findings) {
    if (findings.stream().anyMatch(Finding::isError)) {
      throw new RefusedPublication(findings);
    }
  }

  /** To the microsecond, which is what both databases keep. */
  private static PublishedRevision stored(Edition edition, int number) {
    return PublishedRevision.of(
        new Revision(
            number,
            Instant.now().truncatedTo(ChronoUnit.MICROS),
            edition.note(),
            edition.proposedBy(),
            edition.approvedBy()));
  }
}
