package club.yearline.corrections;

import club.yearline.accounts.Actor;
import club.yearline.catalog.EntryEdit;
import club.yearline.catalog.EntryRef;
import club.yearline.catalog.History;
import club.yearline.catalog.PictureFile;
import club.yearline.effectivity.Entry;
import club.yearline.tables.Sheet;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** What authors do with their corrections. */
@Component
@Transactional
class Drafting {

  private final Corrections corrections;
  private final CorrectionFiles files;
  private final Desk desk;
  private final History history;
  private final ObservedAirframes observed;

  Drafting(
      Corrections corrections,
      CorrectionFiles files,
      Desk desk,
      History history,
      ObservedAirframes observed) {
    this.observed = observed;
    this.corrections = corrections;
    this.files = files;
    this.desk = desk;
    this.history = history;
  }

  /**
   * Begins a correction with what it proposes for one entry; a form that is sent twice begins it
   * once.
   */
  public Correction begin(Actor author, String title, Proposal first, String formToken) {
    return once(
        author, formToken, () -> begin(author, Origin.TYPED, title, List.of(first), formToken));
  }

  /**
   * Prepares a correction that takes back what a revision did. What was published since then stays
   * where it does not clash.
   *
   * @throws club.yearline.catalog.UnknownRevision if there is no such revision
   */
  public Correction undo(Actor author, int revision, String title, String formToken) {
    return once(
        author,
        formToken,
        () -> {
          List<Proposal> inverse =
              history.edits(revision).stream().map(edit -> inverse(edit, revision)).toList();
          return begin(author, Origin.UNDO, title, inverse, formToken);
        });
  }

  /** Prepares a correction from the entries and pictures of a data package. */
  public Correction ofPackage(
      Actor author, String title, PackageProposal proposed, String formToken) {
    return once(
        author,
        formToken,
        () -> {
          List<Proposal> proposals =
              proposed.entries().stream()
                  .map(e -> new Proposal(EntryRef.of(e), Sheet.of(e), proposed.onto()))
                  .toList();
          Correction correction = begin(author, Origin.PACKAGE, title, proposals, formToken);
          for (PictureFile picture : proposed.pictures()) {
            files.save(
                CorrectionFile.of(
                    correction.id(), CorrectionFile.Purpose.PICTURE, picture, author.id()));
          }
          return correction;
        });
  }

  /** Prepares a correction that narrows a cut-in by observed airframes. */
  public Correction narrow(Actor author, Narrowing narrowing, String formToken) {
    return once(
        author,
        formToken,
        () -> {
          List<Proposal> proposals = observed.proposals(narrowing);
          Correction correction =
              begin(author, Origin.TYPED, narrowing.title(), proposals, formToken);
          correction.standOn(author, List.of(observed.ground(narrowing)));
          return corrections.saveAndFlush(correction);
        });
  }

  private static Proposal inverse(EntryEdit edit, int revision) {
    Entry before = edit.before();
    return new Proposal(edit.ref(), before == null ? null : Sheet.of(before), revision);
  }

  private interface Beginning {
    Correction begin();
  }

  private Correction once(Actor author, String formToken, Beginning beginning) {
    Optional<Correction> known = corrections.findByFormToken(formToken);
    return known.filter(c -> c.isBy(author)).orElseGet(beginning::begin);
  }

  private Correction begin(
      Actor author, Origin origin, String title, List<Proposal> proposals, String formToken) {
    Correction correction = Correction.begin(author, origin, title, formToken);
    correction.propose(author, proposals);
    return corrections.saveAndFlush(correction);
  }

  /** Proposes something for an entry, in place of what the correction proposed for it so far. */
  public void propose(Actor author, long id, int version, Proposal proposal) {
    desk.seen(author, id, version).propose(author, proposal);
    desk.write();
  }

  /** Proposes something for several entries at once. */
  public void proposeAll(Actor author, long id, int version, List<Proposal> proposals) {
    desk.seen(author, id, version).propose(author, proposals);
    desk.write();
  }

  /** No longer proposes anything for an entry. */
  public void drop(Actor author, long id, int version, EntryRef ref) {
    desk.seen(author, id, version).drop(author, ref);
    desk.write();
  }

  /** Says what the correction is about and which sources it stands on. */
  public void describe(Actor author, long id, int version, String title, List<Ground> grounds) {
    Correction correction = desk.seen(author, id, version);
    correction.rename(author, title);
    correction.standOn(author, grounds);
    desk.write();
  }

  /** Hands it in. */
  public void submit(Actor author, long id, int version, @Nullable String note) {
    Correction correction = desk.seen(author, id, version);
    correction.submit(author, note);
    desk.tell(correction, author);
  }

  /** Gives it up. */
  public void withdraw(Actor author, long id, int version, @Nullable String note) {
    Correction correction = desk.seen(author, id, version);
    correction.withdraw(author, note);
    desk.tell(correction, author);
  }

  /** Says something about a correction. */
  public void remark(Actor actor, long id, String text, String formToken) {
    Correction correction = desk.visible(actor, id);
    int before = correction.events().size();
    correction.remark(actor, text, formToken);
    if (correction.events().size() > before) {
      desk.tell(correction, actor);
    }
  }
}
