package club.yearline.news;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import club.yearline.accounts.AccountClosed;
import club.yearline.accounts.Actor;
import club.yearline.accounts.JoinAsked;
import club.yearline.catalog.Contributor;
import club.yearline.catalog.RefusedPublication;
import club.yearline.corrections.CorrectionMoved;
import club.yearline.testing.Database;
import club.yearline.testing.Sample;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Watching and messages, on whichever database. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class NewsContract {

  private Company company;

  abstract Database freshDatabase();

  @BeforeAll
  void open() {
    company = Company.on(freshDatabase());
  }

  @AfterAll
  void close() {
    company.close();
  }

  @BeforeEach
  void nobodyWatchesOrKnowsAnything() {
    company.everybody().forEach(person -> company.tell(new AccountClosed(person.id())));
  }

  private List<Message> inbox(Actor person) {
    return company.messages().of(person.id(), 0, 100);
  }

  private List<String> texts(Actor person) {
    return company.words().say(inbox(person));
  }

  // Watching

  @ParameterizedTest
  @CsvSource({"FAMILY, turnstone", "VARIANT, la-2b", "FEATURE, door-latch"})
  void whoWatchesIsToldOnceOfARevisionThatTouchesIt(Watched.Kind kind, String key) {
    company.watches().add(company.member.id(), new Watched(kind, key));
    company.watches().add(company.member.id(), new Watched(kind, key));
    int number = company.newsroom().publish("Anew", company.newsroom().latch("Anew " + key));
    assertThat(inbox(company.member))
        .singleElement()
        .satisfies(
            message -> {
              assertThat(message.about())
                  .isEqualTo(Message.About.revision(number, List.of(new Watched(kind, key))));
              assertThat(message.read()).isFalse();
            });
    assertThat(company.messages().unread(company.member.id())).isEqualTo(1);
    assertThat(inbox(company.other)).isEmpty();
  }

  @Test
  void aRevisionElsewhereIsNoNews() {
    company.watches().add(company.member.id(), Watched.family("whimbrel"));
    company.newsroom().publish("Anew", company.newsroom().latch("Anew elsewhere"));
    assertThat(inbox(company.member)).isEmpty();
  }

  @Test
  void nobodyIsToldOfTheirOwnRevision() {
    for (Actor person : company.everybody().toList()) {
      company.watches().add(person.id(), Watched.family("turnstone"));
    }
    company
        .newsroom()
        .publishBy(
            Contributor.person(company.member.id()),
            Contributor.person(company.moderator.id()),
            "Ours",
            company.newsroom().latch("Ours"));
    assertThat(inbox(company.member)).isEmpty();
    assertThat(inbox(company.moderator)).isEmpty();
    assertThat(inbox(company.other)).hasSize(1);
  }

  @Test
  void whatWasNotPublishedIsNotTold() {
    company.watches().add(company.member.id(), Watched.family("turnstone"));
    company
        .transactions()
        .executeWithoutResult(
            status -> {
              company.newsroom().publish("Never", company.newsroom().latch("Never"));
              status.setRollbackOnly();
            });
    assertThatThrownBy(
            () ->
                company
                    .newsroom()
                    .publish("Wrong", Sample.variant("la-9", "no-such-family", 1964, 1968)))
        .isInstanceOf(RefusedPublication.class);
    assertThat(inbox(company.member)).isEmpty();
  }

  @Test
  void aRevisionThatTouchesVeryMuchIsOneMessageThatNamesSome() {
    company.watches().add(company.member.id(), Watched.family("turnstone"));
    company.watches().add(company.member.id(), Watched.variant("la-2b"));
    company.watches().add(company.member.id(), Watched.feature("door-latch"));
    int number = company.newsroom().publish("Anew", company.newsroom().latch("Anew in all"));
    assertThat(texts(company.member))
        .singleElement()
        .asString()
        .startsWith("Revision " + number + " touches what you watch: ")
        .contains("Family turnstone", "Variant la-2b");
  }

  @Test
  void moreNamesThanAnybodyReadsAreNotListed() {
    List<Watched> many =
        Stream.iterate(1, i -> i + 1).limit(100).map(i -> Watched.feature("f-" + i)).toList();
    company.messages().add(company.member.id(), Message.About.revision(1, many), null);
    assertThat(texts(company.member))
        .containsExactly("Revision 1 touches what you watch: f-1, f-2, f-3, f-4, f-5 and others.");
  }

  @Test
  void revisionsOfBeforeAreNotedLaterAndNotTold() {
    company.watches().add(company.member.id(), Watched.family("turnstone"));
    int number = company.newsroom().publish("Anew", company.newsroom().latch("Anew for later"));
    var noted = company.tallies().of(List.of(number));
    company.jdbc().sql("delete from revision_tally where revision = " + number).update();
    company.jdbc().sql("delete from revision_family where revision = " + number).update();
    company.noting().catchUp();
    company.noting().catchUp();
    assertThat(company.tallies().of(List.of(number))).isEqualTo(noted).hasSize(1);
    assertThat(company.tallies().touching("turnstone", number + 1, 1)).containsExactly(number);
    assertThat(inbox(company.member)).hasSize(1);
  }

  // Corrections and requests

  @ParameterizedTest
  @CsvSource({
    "submitted, member,    moderator second",
    "submitted, moderator, second",
    "sent-back, moderator, member",
    "mended,    moderator, member",
    "approved,  second,    member",
    "rejected,  moderator, member",
    "remark,    moderator, member",
    "remark,    member,    moderator second",
    "withdrawn, member,    ''",
    "approved,  member,    ''"
  })
  void aCorrectionIsToldToThoseItConcernsButNotToWhoDidIt(String what, String by, String told) {
    Actor author = what.equals("submitted") ? company.named(by) : company.member;
    company.tell(
        new CorrectionMoved(7, "The latch", what, author.id(), company.named(by).id(), null));
    assertThat(company.everybody().filter(person -> !inbox(person).isEmpty()))
        .containsExactlyInAnyOrderElementsOf(
            Stream.of(told.split(" ")).filter(s -> !s.isEmpty()).map(company::named).toList());
  }

  @ParameterizedTest
  @CsvSource({
    "sent-back, Your correction “The latch” was sent back by Mona Moderator",
    "mended,    'In your correction “The latch”, Mona Moderator has mended a slip.'",
    "approved,  Your correction “The latch” was approved by Mona Moderator",
    "rejected,  Your correction “The latch” was rejected by Mona Moderator",
    "remark,    Mona Moderator has said something about your correction “The latch”."
  })
  void aMessageSaysWhatHappenedAndLeadsThere(String what, String text) {
    company.tell(
        new CorrectionMoved(
            7, "The latch", what, company.member.id(), company.moderator.id(), "Note"));
    assertThat(texts(company.member)).singleElement().asString().startsWith(text);
    assertThat(inbox(company.member).get(0).about().path()).isEqualTo("/corrections/7");
  }

  @Test
  void everyKindOfMessageHasWords() {
    for (Message.Kind kind : Message.Kind.values()) {
      company
          .messages()
          .add(
              company.member.id(),
              new Message.About(kind, 3, "T", company.moderator.id(), List.of()),
              null);
    }
    assertThat(texts(company.member)).hasSize(Message.Kind.values().length).doesNotContain("");
  }

  @Test
  void moderatorsHearWhoAsksToJoin() {
    company.tell(new JoinAsked(3));
    assertThat(texts(company.moderator)).containsExactly("Somebody asks to join the club.");
    assertThat(inbox(company.moderator).get(0).about().path()).isEqualTo("/admin/joining");
    assertThat(inbox(company.member)).isEmpty();
  }

  @Test
  void aLongTitleIsCutAndOneWithLineEndsStaysOneLine() {
    String title = "Line\r\nBcc: x@y.example\u2028" + "\uD83D\uDE80".repeat(400);
    company.tell(
        new CorrectionMoved(7, title, "mended", company.member.id(), company.moderator.id(), null));
    assertThat(texts(company.member).get(0))
        .contains("Line Bcc: x@y.example \uD83D\uDE80")
        .contains("…”")
        .doesNotContain("\n", "\r");
  }

  // Reading, keeping, leaving

  @Test
  void markingAllAsReadLeavesWhatCameSince() {
    for (int i = 0; i < 3; i++) {
      company.tell(new JoinAsked(i));
    }
    long seen = inbox(company.moderator).get(1).id();
    company.messages().readAll(company.moderator.id(), seen);
    assertThat(inbox(company.moderator))
        .extracting(Message::read)
        .containsExactly(false, true, true);
    assertThat(company.messages().unread(company.second.id())).isEqualTo(3);
  }

  @Test
  void messagesAreKeptForAYearAndNeverMoreThanFiveHundred() {
    company.tell(new JoinAsked(1));
    assertThat(inbox(company.moderator)).hasSize(1);
    company.forgetting().forget(Instant.now().plus(300, ChronoUnit.DAYS));
    assertThat(inbox(company.moderator)).hasSize(1);
    company.forgetting().forget(Instant.now().plus(366, ChronoUnit.DAYS));
    assertThat(inbox(company.moderator)).isEmpty();
    for (int i = 0; i < Forgetting.KEPT_EACH + 3; i++) {
      company.messages().add(company.member.id(), Message.About.joinAsked(i), null);
    }
    company.forgetting().forget(Instant.now());
    assertThat(company.messages().count(company.member.id())).isEqualTo(Forgetting.KEPT_EACH);
    assertThat(inbox(company.member).get(0).about().subject()).isEqualTo(Forgetting.KEPT_EACH + 2);
  }

  @Test
  void whoLeavesTakesMessagesAndWatchesAlong() {
    company.watches().add(company.member.id(), Watched.family("turnstone"));
    company.wishes().set(company.member.id(), MailWish.EACH);
    company.messages().add(company.member.id(), Message.About.joinAsked(1), null);
    company.tell(new AccountClosed(company.member.id()));
    assertThat(inbox(company.member)).isEmpty();
    assertThat(company.watches().of(company.member.id())).isEmpty();
    assertThat(company.wishes().of(company.member.id())).isEqualTo(MailWish.NONE);
  }

  // The outbox

  @Test
  void aMailIsClaimedByOneOnly() throws Exception {
    company.outbox().add(company.member.id(), Instant.EPOCH);
    OutgoingMail mail = company.outbox().due(Instant.now(), 1).get(0);
    List<Thread> racers = new ArrayList<>();
    List<Boolean> won = java.util.Collections.synchronizedList(new ArrayList<>());
    for (int i = 0; i < 8; i++) {
      racers.add(new Thread(() -> won.add(company.outbox().claim(mail, Instant.now()))));
    }
    racers.forEach(Thread::start);
    for (Thread racer : racers) {
      racer.join();
    }
    assertThat(won).hasSize(8).containsOnlyOnce(true);
    company.outbox().drop(mail, Instant.now());
  }

  @Test
  void aDayHasOneDigestForEach() {
    Instant noon = Instant.parse("2026-03-01T12:00:00Z");
    long first = company.outbox().digest(company.member.id(), noon);
    assertThat(company.outbox().digest(company.member.id(), noon.plus(Duration.ofHours(11))))
        .isEqualTo(first);
    assertThat(company.outbox().digest(company.member.id(), noon.plus(Duration.ofHours(12))))
        .isNotEqualTo(first);
    assertThat(company.outbox().digest(company.other.id(), noon)).isNotEqualTo(first);
    assertThat(company.outbox().due(Instant.parse("2026-03-02T05:59:59Z"), 9)).isEmpty();
    assertThat(company.outbox().due(Instant.parse("2026-03-02T06:00:00Z"), 9))
        .extracting(OutgoingMail::person)
        .contains(company.member.id(), company.other.id());
  }

  @Test
  void theFeedsNameIsMadeOnceForEachInstallation() {
    assertThat(company.feedName().whole())
        .startsWith("urn:uuid:")
        .isEqualTo(new FeedName(company.jdbc()).whole());
  }
}
