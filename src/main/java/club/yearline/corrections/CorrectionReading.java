package club.yearline.corrections;

import club.yearline.accounts.Actor;
import club.yearline.accounts.People;
import club.yearline.catalog.EntryRef;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** What forms need to know of corrections. */
@Component
class CorrectionReading {

  private static final int LONGEST_TOKEN = 40;

  private final Corrections corrections;
  private final Desk desk;
  private final People people;

  CorrectionReading(Corrections corrections, Desk desk, People people) {
    this.corrections = corrections;
    this.desk = desk;
    this.people = people;
  }

  /** The version of a correction as it is now. */
  @Transactional(readOnly = true)
  public int version(Actor actor, long id) {
    return desk.visible(actor, id).version();
  }

  /** The name of a correction's author. */
  @Transactional(readOnly = true)
  public String authorOf(Actor actor, long id) {
    return people.nameOf(desk.visible(actor, id).author());
  }

  /** What a correction proposes for an entry; empty where it leaves it alone. */
  @Transactional(readOnly = true)
  public Optional<Proposal> proposal(Actor actor, long id, EntryRef ref) {
    return desk.visible(actor, id).proposal(ref);
  }

  /** All that a correction proposes. */
  @Transactional(readOnly = true)
  public List<Proposal> proposals(Actor actor, long id) {
    return desk.visible(actor, id).proposals();
  }

  /** Whether this person writes in the correction as its author. */
  @Transactional(readOnly = true)
  public boolean canWrite(Actor actor, long id) {
    return desk.visible(actor, id).canWrite(actor);
  }

  /** Titles by number of the corrections in which this person can still write. */
  @Transactional(readOnly = true)
  public Map<Long, String> writable(Actor actor) {
    Map<Long, String> titles = new LinkedHashMap<>();
    corrections
        .findByAuthorIdAndStateInOrderByChangedAtDesc(
            actor.id(), EnumSet.of(State.DRAFT, State.SENT_BACK))
        .forEach(c -> titles.put(c.id(), c.title()));
    return titles;
  }

  /** The token of a form, or a new one where it has none that could be stored. */
  String token(String typed) {
    return typed.isEmpty() || typed.length() > LONGEST_TOKEN ? UUID.randomUUID().toString() : typed;
  }

  /** The correction that a form begins, also where the same form arrives twice at one moment. */
  long once(Actor actor, String token, Supplier<Correction> beginning) {
    try {
      return beginning.get().id();
    } catch (DataIntegrityViolationException alreadyThere) {
      return corrections
          .findByFormToken(token)
          .filter(c -> c.isBy(actor))
          .orElseThrow(() -> alreadyThere)
          .id();
    }
  }
}
