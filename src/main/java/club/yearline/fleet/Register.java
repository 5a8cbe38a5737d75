package club.yearline.fleet;

import club.yearline.accounts.Actor;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** The register as other modules use it. Nobody sees another's airframe unless it is shared. */
@Component
public class Register {

  private final Airframes airframes;
  private final StoredInspections inspections;

  Register(Airframes airframes, StoredInspections inspections) {
    this.airframes = airframes;
    this.inspections = inspections;
  }

  /** A person's own airframes, in the order of registering. */
  public List<Registered> own(Actor actor) {
    return airframes.findByOwnerIdOrderById(actor.id()).stream().map(a -> a.seenBy(actor)).toList();
  }

  /** An airframe; empty where there is none that this person may see. */
  public Optional<Registered> find(Actor actor, long id) {
    return airframes.findById(id).filter(a -> a.isVisibleTo(actor)).map(a -> a.seenBy(actor));
  }

  /** Own and shared airframes of a registration mark, with or without its dash. */
  public List<Registered> marked(Actor actor, String mark) {
    String key = Registration.key(mark);
    return key.isEmpty()
        ? List.of()
        : airframes.visibleByMark(actor.id(), key).stream().map(a -> a.seenBy(actor)).toList();
  }

  /**
   * The airframe of an inspection that is stored already; so that no photograph is looked at twice.
   *
   * @throws club.yearline.web.Refusal 410 if it was stored, and its airframe deleted since
   */
  public Optional<Long> stored(Actor actor, UUID inspection) {
    return inspections.stored(actor, inspection);
  }

  /**
   * Stores an inspection: all of it or nothing, and once, however often and however fast one after
   * the other it is sent. Must not be called inside a transaction.
   *
   * @return the number of the airframe
   * @throws club.yearline.web.Refusal 404 if there is no such airframe of this person, 422 if an
   *     observation names what the catalogue does not have, 410 as for {@link #stored}
   */
  @Transactional(propagation = Propagation.NEVER)
  public long store(Actor actor, Inspected inspected) {
    try {
      return stored(actor, inspected.id()).orElseGet(() -> inspections.store(actor, inspected));
    } catch (DataIntegrityViolationException sentTwiceAtOneMoment) {
      return stored(actor, inspected.id()).orElseThrow(() -> sentTwiceAtOneMoment);
    }
  }
}
