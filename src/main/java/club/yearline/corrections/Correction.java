package club.yearline.corrections;

import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.catalog.EntryRef;
import jakarta.persistence.CascadeType;
import jakarta.persistence.CollectionTable;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OneToMany;
import jakarta.persistence.OrderBy;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.hibernate.Hibernate;
import org.hibernate.annotations.OptimisticLock;
import org.jspecify.annotations.Nullable;

/**
 * What a member proposes: edits of entries, the sources they stand on, and what became of it. Its
 * verbs guard who may do what, and when.
 */
@Entity
class Correction {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "correction_seq")
  @SequenceGenerator(name = "correction_seq", sequenceName = "correction_seq")
  private @Nullable Long id;

  @Version private int lockVersion;
  private long authorId;
  private Origin origin;
  private String title;
  private State state = State.DRAFT;
  private Instant begunAt;
  private Instant changedAt;
  private @Nullable Instant submittedAt;
  private @Nullable Instant decidedAt;
  private @Nullable Long decidedBy;
  private @Nullable Integer revision;
  private String formToken;

  @OneToMany(cascade = CascadeType.ALL, orphanRemoval = true)
  @JoinColumn(name = "correction_id", nullable = false, updatable = false)
  @OrderBy("id")
  private List<ProposedEdit> edits = new ArrayList<>();

  @ElementCollection
  @CollectionTable(name = "ground", joinColumns = @JoinColumn(name = "correction_id"))
  @OrderColumn(name = "position")
  private List<Ground> grounds = new ArrayList<>();

  /** What is said about a correction makes no form stale that somebody is filling in. */
  @OptimisticLock(excluded = true)
  @OneToMany(cascade = CascadeType.PERSIST)
  @JoinColumn(name = "correction_id", nullable = false, updatable = false)
  @OrderBy("happenedAt, id")
  private List<CorrectionEvent> events = new ArrayList<>();

  protected Correction() {}

  /**
   * Begins a draft.
   *
   * @param formToken of the form that began it
   */
  static Correction begin(Actor author, Origin origin, String title, String formToken) {
    Correction correction = new Correction();
    correction.authorId = author.id();
    correction.origin = origin;
    correction.title = title;
    correction.formToken = formToken;
    correction.begunAt = now();
    correction.changedAt = correction.begunAt;
    return correction;
  }

  // What its author does

  /** Says what it is about. */
  void rename(Actor actor, String to) {
    requireWriting(actor);
    title = to;
    touch();
  }

  /** Proposes something for an entry, in place of what it proposed for it so far. */
  void propose(Actor actor, Proposal proposal) {
    propose(actor, List.of(proposal));
  }

  /** The same for many entries at once. */
  void propose(Actor actor, List<Proposal> proposals) {
    requireWriting(actor);
    put(proposals);
  }

  /** No longer proposes anything for an entry. */
  void drop(Actor actor, EntryRef ref) {
    requireWriting(actor);
    edits.removeIf(edit -> edit.ref().equals(ref));
    touch();
  }

  /** Stands on these sources, in place of those so far. */
  void standOn(Actor actor, List<Ground> sources) {
    requireWriting(actor);
    grounds.clear();
    grounds.addAll(sources);
    touch();
  }

  /**
   * Hands it in.
   *
   * @throws club.yearline.web.Refusal if it has nothing to hand in, or nothing to stand on
   */
  void submit(Actor actor, @Nullable String note) {
    requireWriting(actor);
    if (edits.isEmpty()) {
      throw Denials.unready("correction-empty");
    }
    if (origin.needsGround() && grounds.isEmpty()) {
      throw Denials.unready("correction-unsourced");
    }
    become(State.SUBMITTED);
    submittedAt = changedAt;
    record(CorrectionEvent.What.SUBMITTED, actor, note);
  }

  /** Gives it up. */
  void withdraw(Actor actor, @Nullable String note) {
    requireAuthor(actor);
    become(State.WITHDRAWN);
    record(CorrectionEvent.What.WITHDRAWN, actor, note);
  }

  // What others do

  /** Says something about it; a form that is sent twice says it once. */
  void remark(Actor actor, String text, String token) {
    requireVisible(actor);
    if (events.stream().noneMatch(event -> event.cameFrom(token))) {
      events.add(CorrectionEvent.remark(actor.id(), text, token));
    }
  }

  /** Mends a slip in what was handed in; what the author had written is kept. */
  void mend(Actor moderator, Proposal proposal) {
    requireModerator(moderator);
    requireSubmitted();
    ProposedEdit edit =
        edits.stream()
            .filter(e -> e.ref().equals(proposal.ref()))
            .findFirst()
            .orElseThrow(() -> Denials.unready("mend-foreign"));
    events.add(CorrectionEvent.mended(moderator.id(), edit.proposal()));
    put(List.of(proposal));
  }

  /** Gives it back to its author with what to improve. */
  void sendBack(Actor moderator, String note) {
    requireModerator(moderator);
    become(State.SENT_BACK);
    record(CorrectionEvent.What.SENT_BACK, moderator, note);
  }

  /**
   * Refuses it.
   *
   * @param alone whether the club lets one person decide on own corrections
   */
  void reject(Actor moderator, String note, boolean alone) {
    requireDecider(moderator, alone);
    decide(moderator, State.REJECTED);
    record(CorrectionEvent.What.REJECTED, moderator, note);
  }

  /** Checks that this person may approve it now, before anything is published. */
  void requireApprovable(Actor moderator, boolean alone) {
    requireDecider(moderator, alone);
    requireSubmitted();
  }

  /** Is approved and has become a revision. */
  void approve(Actor moderator, boolean alone, int published, @Nullable String note) {
    requireApprovable(moderator, alone);
    decide(moderator, State.APPROVED);
    revision = published;
    record(CorrectionEvent.What.APPROVED, moderator, note);
  }

  // What it is

  long id() {
    return Objects.requireNonNull(id);
  }

  /** Grows with every change; a form that saw an older one is stale. */
  int version() {
    return lockVersion;
  }

  long author() {
    return authorId;
  }

  Origin origin() {
    return origin;
  }

  String title() {
    return title;
  }

  State state() {
    return state;
  }

  Instant changedAt() {
    return changedAt;
  }

  Optional<Integer> revision() {
    return Optional.ofNullable(revision);
  }

  List<Proposal> proposals() {
    return edits.stream().map(ProposedEdit::proposal).toList();
  }

  Optional<Proposal> proposal(EntryRef ref) {
    return edits.stream().filter(e -> e.ref().equals(ref)).map(ProposedEdit::proposal).findFirst();
  }

  /** How many entries it changes; does not read them, since a data package may have thousands. */
  int size() {
    return Hibernate.size(edits);
  }

  List<Ground> grounds() {
    return List.copyOf(grounds);
  }

  List<CorrectionEvent> events() {
    return List.copyOf(events);
  }

  boolean isBy(Actor actor) {
    return authorId == actor.id();
  }

  /** A draft is its author's own; what was once handed in can be read by every member. */
  boolean isVisibleTo(Actor actor) {
    return isBy(actor) || submittedAt != null;
  }

  boolean canWrite(Actor actor) {
    return isBy(actor) && state.isWithAuthor();
  }

  /** Whether this person may decide on it. */
  boolean canDecide(Actor actor, boolean alone) {
    return state == State.SUBMITTED
        && actor.role().atLeast(Role.MODERATOR)
        && (alone || !isBy(actor) || isImport(actor));
  }

  /** Whether it is a package that a keeper brings, and may publish without anybody else. */
  private boolean isImport(Actor actor) {
    return origin == Origin.PACKAGE && actor.role().atLeast(Role.KEEPER);
  }

  // Guards

  private void requireVisible(Actor actor) {
    if (!isVisibleTo(actor)) {
      throw Denials.unknown(id());
    }
  }

  private void requireAuthor(Actor actor) {
    if (!isBy(actor)) {
      throw Denials.unknown(id());
    }
  }

  /** Checks that this person may write in it now. */
  void requireWriting(Actor actor) {
    requireAuthor(actor);
    if (!state.isWithAuthor()) {
      throw Denials.moved("correction-not-writable");
    }
  }

  private void requireModerator(Actor actor) {
    if (!actor.role().atLeast(Role.MODERATOR)) {
      throw Denials.person("moderators-only");
    }
  }

  private void requireDecider(Actor actor, boolean alone) {
    requireModerator(actor);
    if (isBy(actor) && !alone && !isImport(actor)) {
      throw Denials.person("own-correction");
    }
  }

  private void requireSubmitted() {
    if (state != State.SUBMITTED) {
      throw Denials.moved(state.isFinal() ? "correction-decided" : "correction-not-submitted");
    }
  }

  private void become(State next) {
    if (!state.canBecome(next)) {
      throw Denials.moved(state.isFinal() ? "correction-decided" : "correction-not-submitted");
    }
    state = next;
    touch();
  }

  private void decide(Actor moderator, State next) {
    become(next);
    decidedBy = moderator.id();
    decidedAt = changedAt;
  }

  private void put(List<Proposal> proposals) {
    Map<EntryRef, ProposedEdit> known = new HashMap<>();
    edits.forEach(edit -> known.put(edit.ref(), edit));
    for (Proposal proposal : proposals) {
      ProposedEdit edit = known.get(proposal.ref());
      if (edit == null) {
        edit = ProposedEdit.of(proposal);
        known.put(proposal.ref(), edit);
        edits.add(edit);
      } else {
        edit.become(proposal);
      }
    }
    touch();
  }

  private void record(CorrectionEvent.What what, Actor actor, @Nullable String note) {
    events.add(CorrectionEvent.of(what, actor.id(), note));
  }

  /** Every change of a part is a change of the whole, so that a stale form is noticed. */
  private void touch() {
    changedAt = now();
  }

  private static Instant now() {
    return Instant.now().truncatedTo(ChronoUnit.MICROS);
  }
}
