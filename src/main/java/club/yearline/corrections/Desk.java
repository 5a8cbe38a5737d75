package club.yearline.corrections;

import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.web.Refusal;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Where corrections are fetched for those who may see them. */
@Component
@Transactional(readOnly = true)
class Desk {

  private final Corrections corrections;
  private final ApplicationEventPublisher events;

  Desk(Corrections corrections, ApplicationEventPublisher events) {
    this.corrections = corrections;
    this.events = events;
  }

  /**
   * A correction.
   *
   * @throws club.yearline.web.Refusal if there is none, or none that this person may see
   */
  public Correction visible(Actor actor, long id) {
    return corrections
        .findById(id)
        .filter(c -> c.isVisibleTo(actor))
        .orElseThrow(() -> Denials.unknown(id));
  }

  /**
   * The correction that became a revision.
   *
   * @throws club.yearline.web.Refusal if the revision did not come of a correction
   */
  public Correction ofRevision(Actor actor, int revision) {
    return corrections
        .findByRevision(revision)
        .filter(c -> c.isVisibleTo(actor))
        .orElseThrow(() -> Refusal.notFound("no-correction-of-revision", revision));
  }

  /**
   * A correction to change, as a form saw it.
   *
   * @param version the version that the form saw
   * @throws club.yearline.web.Refusal if the correction has changed since
   */
  Correction seen(Actor actor, long id, int version) {
    Correction correction = visible(actor, id);
    if (correction.version() != version) {
      throw Denials.moved(
          correction.state().isFinal() ? "correction-decided" : "correction-changed");
    }
    return correction;
  }

  /**
   * Writes what has changed here, not at the commit, so that whoever comes second is told.
   *
   * @throws club.yearline.web.Refusal if somebody else was faster
   */
  void write() {
    try {
      corrections.flush();
    } catch (OptimisticLockingFailureException e) {
      throw Denials.moved("correction-changed");
    }
  }

  /** Writes what has changed, and tells the rest of the application what happened last. */
  void tell(Correction correction, Actor actor) {
    write();
    CorrectionEvent last = correction.events().get(correction.events().size() - 1);
    events.publishEvent(
        new CorrectionMoved(
            correction.id(),
            correction.title(),
            last.what().code(),
            correction.author(),
            actor.id(),
            last.note()));
  }

  static boolean isModerator(Actor actor) {
    return actor.role().atLeast(Role.MODERATOR);
  }
}
