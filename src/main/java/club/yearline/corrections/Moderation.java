package club.yearline.corrections;

import club.yearline.accounts.Actor;
import club.yearline.accounts.Club;
import club.yearline.catalog.CatalogueMoved;
import club.yearline.catalog.Contributor;
import club.yearline.catalog.Edition;
import club.yearline.catalog.Publication;
import club.yearline.catalog.RefusedPublication;
import club.yearline.catalog.Revision;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** What moderators do with corrections of others. */
@Component
@Transactional
class Moderation {

  private final Desk desk;
  private final Reviews reviews;
  private final Publication publication;
  private final Club club;

  Moderation(Desk desk, Reviews reviews, Publication publication, Club club) {
    this.desk = desk;
    this.reviews = reviews;
    this.publication = publication;
    this.club = club;
  }

  /** Mends a slip in what was handed in. */
  public void mend(Actor moderator, long id, int version, Proposal proposal) {
    mendAll(moderator, id, version, List.of(proposal));
  }

  /** Mends what was handed in for several entries at once. */
  public void mendAll(Actor moderator, long id, int version, List<Proposal> proposals) {
    Correction correction = desk.seen(moderator, id, version);
    proposals.forEach(proposal -> correction.mend(moderator, proposal));
    desk.tell(correction, moderator);
  }

  /** Gives a correction back to its author with what to improve. */
  public void sendBack(Actor moderator, long id, int version, String note) {
    Correction correction = desk.seen(moderator, id, version);
    correction.sendBack(moderator, note);
    desk.tell(correction, moderator);
  }

  /** Refuses a correction. */
  public void reject(Actor moderator, long id, int version, String note) {
    Correction correction = desk.seen(moderator, id, version);
    correction.reject(moderator, note, club.isSingleKeeper());
    desk.tell(correction, moderator);
  }

  /**
   * Approves a correction, as its impact was looked at, and publishes it.
   *
   * @param version the version of the correction that was looked at
   * @param onto the newest revision when its impact was looked at
   * @return the revision that it became
   * @throws club.yearline.web.Refusal if either has moved on since, or it cannot be published
   */
  public Revision approve(Actor moderator, long id, int version, int onto, @Nullable String note) {
    Correction correction = desk.seen(moderator, id, version);
    correction.requireApprovable(moderator, club.isSingleKeeper());
    Review review = reviews.of(correction);
    if (review.onto() != onto) {
      throw Denials.moved("catalogue-moved", review.onto());
    }
    if (!review.isPublishable()) {
      throw Denials.unready(
          review.candidate().changesNothing() ? "correction-changes-nothing" : "correction-errors");
    }
    Revision revision = publish(correction, review, moderator);
    correction.approve(moderator, club.isSingleKeeper(), revision.number(), note);
    desk.tell(correction, moderator);
    return revision;
  }

  private Revision publish(Correction correction, Review review, Actor moderator) {
    Edition edition =
        reviews
            .edition(correction, review.candidate())
            .by(Contributor.person(correction.author()), Contributor.person(moderator.id()));
    try {
      return publication.publish(edition, review.onto());
    } catch (CatalogueMoved e) {
      throw Denials.moved("catalogue-moved", e.newest());
    } catch (RefusedPublication e) {
      throw Denials.unready("correction-errors");
    }
  }
}
