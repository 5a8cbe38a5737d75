package club.yearline.corrections;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import club.yearline.accounts.Actor;
import club.yearline.catalog.EntryRef;
import club.yearline.catalog.Revision;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.EntryKind;
import club.yearline.effectivity.Impact;
import club.yearline.tables.Sheet;
import club.yearline.testing.Database;
import club.yearline.testing.Sample;
import club.yearline.uploads.Evidence;
import club.yearline.web.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** What becomes of corrections, on whichever database. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class CorrectionsContract {

  private Clubhouse club;

  abstract Database freshDatabase();

  @BeforeAll
  void open() {
    club = Clubhouse.on(freshDatabase());
  }

  @AfterAll
  void close() {
    club.close();
  }

  @BeforeEach
  void startOver() {
    club.startOver();
  }

  // From a draft to a revision

  @Test
  void anApprovedCorrectionIsTheNextRevisionAndThePastStaysAsItWas() {
    int before = club.head();
    Entry old = club.rotary();
    long id = club.submitted(1967);
    Revision revision = approve(club.moderator, id);
    assertThat(revision.number()).isEqualTo(before + 1);
    assertThat(revision.proposedBy().person()).isEqualTo(club.member.id());
    assertThat(revision.approvedBy().person()).isEqualTo(club.moderator.id());
    assertThat(((Change) club.rotary()).cutIns().get(0).firstYear()).isEqualTo(1967);
    assertThat(club.snapshots().at(before).entry(Clubhouse.ROTARY)).hasValue(old);
    Correction decided = club.read(id);
    assertThat(decided.state()).isEqualTo(State.APPROVED);
    assertThat(decided.revision()).hasValue(revision.number());
  }

  @Test
  void whatACorrectionStandsOnIsCitedByTheEntriesThatItChanges() {
    approve(club.moderator, club.submitted(1967));
    assertThat(club.rotary().citations())
        .anySatisfy(
            citation -> {
              assertThat(citation.source()).isEqualTo("parts-book");
              assertThat(citation.locator()).isEqualTo("p. 52-7");
            });
  }

  @Test
  void theReviewNamesTheAnswersThatWouldChange() {
    Review review = club.review(club.submitted(1967));
    assertThat(Impact.between(review.before(), review.after().orElseThrow()))
        .anySatisfy(
            row -> {
              assertThat(row.variant().key()).isEqualTo("la-2b");
              assertThat(row.firstYear()).isEqualTo(1966);
              assertThat(row.airframesAfter()).isEqualTo(100);
            });
  }

  @Test
  void aCorrectionThatCameBackIsImprovedAndHandedInAgain() {
    long id = club.submitted(1976);
    club.moderation().sendBack(club.moderator, id, club.version(id), "1976 is after the run.");
    assertThat(club.read(id).state()).isEqualTo(State.SENT_BACK);
    Proposal improved =
        new Proposal(
            Clubhouse.ROTARY,
            Clubhouse.cutIn(Sheet.of(club.rotary()), "first_year", "settled_year", 1967),
            club.head());
    club.drafting().propose(club.member, id, club.version(id), improved);
    club.drafting().submit(club.member, id, club.version(id), "You are right.");
    approve(club.second, id);
    assertThat(club.read(id).events())
        .extracting(CorrectionEvent::what)
        .containsExactly(
            CorrectionEvent.What.SUBMITTED,
            CorrectionEvent.What.SENT_BACK,
            CorrectionEvent.What.SUBMITTED,
            CorrectionEvent.What.APPROVED);
  }

  @Test
  void aMendedSlipKeepsWhatTheAuthorHadWritten() {
    long id = club.submitted(1976);
    Sheet mended = Clubhouse.cutIn(Sheet.of(club.rotary()), "first_year", "settled_year", 1967);
    club.moderation()
        .mend(
            club.moderator,
            id,
            club.version(id),
            new Proposal(Clubhouse.ROTARY, mended, club.head()));
    CorrectionEvent event = last(club.read(id));
    assertThat(event.what()).isEqualTo(CorrectionEvent.What.MENDED);
    assertThat(event.mended()).hasValue(Clubhouse.ROTARY);
    assertThat(event.mendedFrom().rows("cut-ins").get(0)).containsEntry("first_year", "1976");
    assertThat(club.read(id).proposals().get(0).sheet()).isEqualTo(mended);
  }

  @Test
  void aWholeNewVariantWithItsBlocksIsOneCorrection() {
    long id =
        club.drafting()
            .begin(
                club.member,
                "The LA-2C",
                proposal(
                    EntryKind.VARIANT,
                    "la-2c",
                    Map.of(
                        "variants",
                        List.of(Map.of("family", "turnstone", "designation", "LA-2C")),
                        "production-runs",
                        List.of(Map.of("first_year", "1969", "last_year", "1970")))),
                token())
            .id();
    club.drafting()
        .propose(
            club.member,
            id,
            club.version(id),
            proposal(
                EntryKind.SERIAL_BLOCK,
                "lt-1969",
                Map.of(
                    "serial-blocks",
                    List.of(
                        Map.of(
                            "series", "lt",
                            "first_serial", "LT-0501",
                            "last_serial", "LT-0600",
                            "variant", "la-2c",
                            "year", "1969")))));
    approve(club.moderator, club.submit(id));
    assertThat(club.snapshots().head().catalogue().model("la-2c")).isPresent();
    approve(club.second, submit(undo(club.head())));
    assertThat(club.snapshots().head().catalogue().model("la-2c")).isEmpty();
  }

  // Who may do what

  @Test
  void nobodySeesADraftOfSomebodyElse() {
    long id = club.draft(1967);
    assertRefused(404, () -> club.drafting().remark(club.other, id, "Hm", token()));
    assertRefused(404, () -> club.moderation().reject(club.moderator, id, club.version(id), "No"));
  }

  @Test
  void nobodyDecidesOnAnOwnCorrection() {
    long id =
        club.submit(
            club.draft(
                club.moderator,
                sheet -> Clubhouse.cutIn(sheet, "first_year", "settled_year", 1967)));
    assertRefused(403, () -> approve(club.moderator, id));
    assertRefused(403, () -> club.moderation().reject(club.moderator, id, club.version(id), "No"));
    approve(club.second, id);
  }

  @Test
  void aMemberDecidesOnNothing() {
    long id = club.submitted(1967);
    assertRefused(403, () -> approve(club.other, id));
    assertRefused(403, () -> club.moderation().sendBack(club.other, id, club.version(id), "Hm"));
    assertRefused(
        403,
        () ->
            club.moderation()
                .mend(club.other, id, club.version(id), club.read(id).proposals().get(0)));
  }

  @Test
  void aDecidedCorrectionIsDecided() {
    long id = club.submitted(1967);
    club.moderation().reject(club.moderator, id, club.version(id), "No evidence.");
    assertRefused(409, () -> approve(club.second, id));
    assertRefused(409, () -> club.drafting().withdraw(club.member, id, club.version(id), null));
  }

  @Test
  void aCorrectionNeedsASourceAndSomethingToChange() {
    long id = club.draft(1967);
    assertRefused(422, () -> club.drafting().submit(club.member, id, club.version(id), null));
    club.drafting().drop(club.member, id, club.version(id), Clubhouse.ROTARY);
    assertRefused(422, () -> club.drafting().submit(club.member, id, club.version(id), null));
  }

  @Test
  void errorsStopAnApproval() {
    long id =
        club.submit(club.draft(club.member, sheet -> sheet.with("change-offerings", List.of())));
    Review review = club.review(id);
    assertThat(review.hasErrors()).isTrue();
    assertRefused(422, () -> approve(club.moderator, id));
    assertThat(club.read(id).state()).isEqualTo(State.SUBMITTED);
  }

  @Test
  void anOlderFormIsToldThatTheCorrectionHasChanged() {
    long id = club.draft(1967);
    int seen = club.version(id);
    club.drafting().describe(club.member, id, seen, "Another title", List.of());
    assertRefused(409, () -> club.drafting().describe(club.member, id, seen, "A third", List.of()));
    assertThat(club.read(id).title()).isEqualTo("Another title");
  }

  @Test
  void aRemarkMakesNoOpenFormStale() {
    long id = club.submitted(1967);
    int seen = club.version(id);
    String token = token();
    club.drafting().remark(club.other, id, "I have seen one.", token);
    club.drafting().remark(club.other, id, "I have seen one.", token);
    assertThat(club.version(id)).isEqualTo(seen);
    assertThat(club.read(id).events())
        .filteredOn(e -> e.what() == CorrectionEvent.What.REMARK)
        .hasSize(1);
  }

  // When the catalogue moves on

  @Test
  void whatDoesNotClashIsMerged() {
    long id = club.submitted(1967);
    Change published = (Change) club.rotary();
    club.publish(List.of(retitled(published, "Rotary latch, both doors")));
    approve(club.moderator, id);
    Change merged = (Change) club.rotary();
    assertThat(merged.title()).isEqualTo("Rotary latch, both doors");
    assertThat(merged.cutIns().get(0).firstYear()).isEqualTo(1967);
  }

  @Test
  void whatClashesIsAskedAbout() {
    long id = club.submitted(1967);
    club.publish(
        List.of(
            Sample.change(
                "door-latch-rotary", "door-latch", "rotary", Sample.fromYear("la-2b", 1965))));
    Review review = club.review(id);
    assertThat(review.candidate().isBlocked()).isTrue();
    assertThat(review.candidate().pieces().get(0).merge().clashes())
        .extracting(Clash::column)
        .containsExactly("first_year", "settled_year");
    assertRefused(422, () -> approve(club.moderator, id));
  }

  @Test
  void anImpactThatWasLookedAtBeforeTheCatalogueMovedIsLookedAtAgain() {
    long id = club.submitted(1967);
    int onto = club.head();
    club.publish(List.of(Sample.family("other")));
    assertRefused(
        409, () -> club.moderation().approve(club.moderator, id, club.version(id), onto, null));
    club.moderation().approve(club.moderator, id, club.version(id), club.head(), null);
  }

  @Test
  void anUndoTakesBackTheRevisionAndKeepsWhatCameAfter() {
    Entry original = club.rotary();
    int revision = approve(club.moderator, club.submitted(1967)).number();
    club.publish(List.of(Sample.family("later")));
    approve(club.second, submit(undo(revision)));
    assertThat(club.rotary()).isEqualTo(original);
    assertThat(club.snapshots().head().catalogue().family("later")).isPresent();
    assertThat(
            ((Change) club.snapshots().at(revision).entry(Clubhouse.ROTARY).orElseThrow())
                .cutIns()
                .get(0)
                .firstYear())
        .isEqualTo(1967);
  }

  // All at once

  @Test
  void ofTwoModeratorsWhoApproveAtTheSameMomentOneWinsAndTheOtherIsTold() throws Exception {
    for (int round = 0; round < 5; round++) {
      club.startOver();
      long id = club.submitted(1967);
      int version = club.version(id);
      int onto = club.head();
      List<Object> outcomes =
          atOnce(
              () -> club.moderation().approve(club.moderator, id, version, onto, null),
              () -> club.moderation().approve(club.second, id, version, onto, null));
      assertOneWins(outcomes);
      assertThat(club.snapshots().revisions().get(0).number()).isEqualTo(onto + 1);
    }
  }

  @Test
  void ofApprovingAndRejectingAtTheSameMomentOneWins() throws Exception {
    for (int round = 0; round < 5; round++) {
      club.startOver();
      long id = club.submitted(1967);
      int version = club.version(id);
      int onto = club.head();
      List<Object> outcomes =
          atOnce(
              () -> club.moderation().approve(club.moderator, id, version, onto, null),
              () -> {
                club.moderation().reject(club.second, id, version, "No");
                return "rejected";
              });
      assertOneWins(outcomes);
      boolean approved = club.read(id).state() == State.APPROVED;
      assertThat(club.snapshots().revisions().get(0).number())
          .isEqualTo(approved ? onto + 1 : onto);
    }
  }

  @Test
  void ofTwoCorrectionsApprovedOntoOneStateOneIsAskedToLookAgain() throws Exception {
    long first = club.submitted(1967);
    long other = club.submitted(1968);
    int onto = club.head();
    int firstVersion = club.version(first);
    int otherVersion = club.version(other);
    List<Object> outcomes =
        atOnce(
            () -> club.moderation().approve(club.moderator, first, firstVersion, onto, null),
            () -> club.moderation().approve(club.second, other, otherVersion, onto, null));
    assertOneWins(outcomes);
  }

  @Test
  void filesThatArriveAtOneMomentAreNeverTooMany() throws Exception {
    long id = club.draft(1967);
    ExecutorService people = Executors.newFixedThreadPool(8);
    try {
      List<Callable<Void>> sending = new ArrayList<>();
      for (int i = 0; i < 12; i++) {
        Evidence file = new Evidence(i + ".jpg", "image/jpeg", new byte[] {1, (byte) i});
        sending.add(
            () -> {
              club.attaching().attach(club.member, id, file);
              return null;
            });
      }
      people.invokeAll(sending);
    } finally {
      people.shutdownNow();
    }
    List<FileLine> kept = club.attaching().attached(club.member, id).files();
    assertThat(kept).hasSize(5);
    assertThat(club.attaching().file(club.member, id, kept.get(0).id()).bytes()).hasSize(2);
  }

  @Test
  void othersThatWaitAndChangeTheSameAreFound() {
    long id = club.submitted(1967);
    long draft = club.draft(1968);
    long waiting = club.submitted(1969);
    assertThat(club.beside(id)).contains(waiting).doesNotContain(id, draft);
  }

  @Test
  void aFormSentTwiceBeginsOneCorrection() {
    String token = token();
    Proposal proposal = new Proposal(Clubhouse.ROTARY, Sheet.of(club.rotary()), club.head());
    long first = club.drafting().begin(club.member, "Once", proposal, token).id();
    assertThat(club.drafting().begin(club.member, "Once", proposal, token).id()).isEqualTo(first);
  }

  @Test
  void aFormSentTwiceAtOneMomentBeginsOneCorrectionToo() throws Exception {
    String token = token();
    Proposal proposal = new Proposal(Clubhouse.ROTARY, Sheet.of(club.rotary()), club.head());
    Callable<Long> sending =
        () ->
            club.reading()
                .once(
                    club.member,
                    token,
                    () -> club.drafting().begin(club.member, "Once", proposal, token));
    List<Object> outcomes = atOnce(sending, sending);
    assertThat(outcomes.get(0)).isInstanceOf(Long.class).isEqualTo(outcomes.get(1));
  }

  @Test
  void theDatabaseRefusesADecisionWithoutSomebodyWhoDecided() {
    long id = club.submitted(1967);
    assertThatThrownBy(
            () ->
                club.jdbc()
                    .sql("update correction set state = 'approved' where id = " + id)
                    .update())
        .isInstanceOf(org.springframework.dao.DataIntegrityViolationException.class);
  }

  // How the tests speak

  private Revision approve(Actor moderator, long id) {
    return club.moderation().approve(moderator, id, club.version(id), club.head(), null);
  }

  private long undo(int revision) {
    return club.drafting().undo(club.member, revision, "Undo", token()).id();
  }

  private long submit(long undo) {
    club.drafting().submit(club.member, undo, club.version(undo), "It was wrong.");
    return undo;
  }

  private Proposal proposal(
      EntryKind kind, String key, Map<String, List<Map<String, String>>> tables) {
    return new Proposal(new EntryRef(kind, key), Sheet.of(kind, key, tables), club.head());
  }

  private static Change retitled(Change change, String title) {
    return new Change(
        change.key(),
        change.feature(),
        title,
        change.detail(),
        change.offering(),
        change.cutIns(),
        change.citations());
  }

  private static CorrectionEvent last(Correction correction) {
    return correction.events().get(correction.events().size() - 1);
  }

  private static String token() {
    return UUID.randomUUID().toString();
  }

  private static void assertRefused(int status, ThrowingCallable action) {
    assertThatThrownBy(action)
        .isInstanceOfSatisfying(
            Refusal.class, refusal -> assertThat(refusal.status().value()).isEqualTo(status));
  }

  private static void assertOneWins(List<Object> outcomes) {
    assertThat(outcomes).filteredOn(outcome -> outcome instanceof Exception).hasSize(1);
    assertThat(outcomes)
        .filteredOn(outcome -> outcome instanceof Exception)
        .allMatch(e -> e instanceof Refusal refusal && refusal.status().value() == 409);
  }

  /** What came of doing two things at the same moment: a result or an exception each. */
  private static List<Object> atOnce(Callable<?> one, Callable<?> two) throws Exception {
    ExecutorService people = Executors.newFixedThreadPool(2);
    try {
      CyclicBarrier start = new CyclicBarrier(2);
      List<Future<Object>> futures = new ArrayList<>();
      for (Callable<?> action : List.of(one, two)) {
        futures.add(
            people.submit(
                () -> {
                  start.await();
                  try {
                    return (Object) action.call();
                  } catch (RuntimeException e) {
                    return e;
                  }
                }));
      }
      return List.of(futures.get(0).get(), futures.get(1).get());
    } finally {
      people.shutdownNow();
    }
  }
}
