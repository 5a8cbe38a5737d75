package club.yearline.catalog;

import static club.yearline.effectivity.EntryKind.CHANGE;
import static club.yearline.effectivity.EntryKind.FAMILY;
import static club.yearline.effectivity.EntryKind.VARIANT;
import static club.yearline.testing.Sample.turnstone;
import static club.yearline.testing.Sample.variant;
import static club.yearline.testing.Sample.with;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import club.yearline.effectivity.Entry;
import club.yearline.effectivity.EntryKind;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Finding;
import club.yearline.effectivity.Picture;
import club.yearline.effectivity.Records;
import club.yearline.effectivity.YearMeaning;
import club.yearline.testing.Catalogues;
import club.yearline.testing.Database;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.dao.DataAccessException;

/**
 * What the catalogue's storage does, on whichever database. The tests share one instance, since
 * starting one takes seconds; each withdraws in the end whatever it has published.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class StorageContract {

  private Database database;
  Instance instance;

  abstract Database freshDatabase();

  @BeforeAll
  void start() {
    database = freshDatabase();
    instance = Instance.on(database);
  }

  @AfterAll
  void stop() {
    instance.close();
  }

  @AfterEach
  void withdrawAll() {
    Records left = instance.snapshots().head().catalogue().records();
    instance
        .publication()
        .publish(
            Edition.of("Start over", null, List.of())
                .withdrawing(left.entries().stream().map(EntryRef::of).toList())
                .withdrawingPictures(left.pictures().stream().map(Picture::name).toList()));
  }

  @Test
  void everyFieldOfEveryKindReadsBackAsPublished() {
    List<Entry> entries = new ArrayList<>(EveryField.filled());
    entries.addAll(EveryField.bare());
    instance
        .publication()
        .publish(Edition.of("All fields", "Åsa", entries).withPictures(EveryField.pictures()));
    assertThat(readBack().entries()).containsExactlyInAnyOrderElementsOf(entries);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void randomCataloguesReadBackAsPublished(long seed) {
    Records records = Catalogues.random(seed);
    List<PictureFile> files =
        records.pictures().stream()
            .map(p -> new PictureFile(p.name(), p.mediaType(), Catalogues.pictureBytes(p.name())))
            .toList();
    instance
        .publication()
        .publish(Edition.of("Random", "Åsa", records.entries()).withPictures(files));
    assertThat(readBack()).isEqualTo(instance.snapshots().head().catalogue().records());
    assertThat(readBack().entries()).containsExactlyInAnyOrderElementsOf(records.entries());
    assertThat(readBack().pictures()).containsExactlyInAnyOrderElementsOf(records.pictures());
  }

  @Test
  void aPastRevisionReadsAsItDidAfterChangesAndWithdrawals() {
    int first = publish(turnstone()).number();
    Snapshot then = instance.snapshots().head();
    publish(List.of(family("turnstone", "Renamed")));
    int last = withdraw(CHANGE, "door-latch-rotary").number();

    assertThat(instance.snapshots().head().catalogue().change("door-latch-rotary")).isEmpty();
    assertThat(storedAt(first)).isEqualTo(then.catalogue().records());
    assertThat(instance.snapshots().at(first)).isEqualTo(then);
    assertThat(storedAt(last)).isEqualTo(instance.snapshots().head().catalogue().records());
  }

  @Test
  void aPastRevisionReadsTheSameWhicheverStateItIsBuiltFrom() {
    int first = publish(turnstone()).number();
    publish(List.of(family("turnstone", "Renamed")));
    withdraw(CHANGE, "door-latch-rotary");
    int last = publish(turnstone()).number();

    for (int revision = first; revision <= last; revision++) {
      Snapshot fromHead = instance.stored().at(revision, instance.snapshots().head());
      assertThat(fromHead.catalogue().records()).isEqualTo(storedAt(revision));
    }
  }

  @Test
  void beforeTheFirstRevisionNothingIsPublished() {
    Snapshot none = instance.snapshots().at(0);
    assertThat(none.catalogue().records()).isEqualTo(Records.NONE);
    assertThat(none.revision()).isEqualTo(Revision.NONE);
  }

  @Test
  void aRevisionThatIsNotThereNamesTheHighest() {
    int newest = publish(turnstone()).number();
    assertThatThrownBy(() -> instance.snapshots().at(newest + 1))
        .isInstanceOf(UnknownRevision.class)
        .hasMessageContaining("the highest is " + newest);
    assertThatThrownBy(() -> instance.snapshots().at(-1)).isInstanceOf(UnknownRevision.class);
    assertThatThrownBy(() -> instance.history().edits(newest + 1))
        .isInstanceOf(UnknownRevision.class);
  }

  @Test
  void entriesThatReadAsBeforeMakeNoVersion() {
    publish(turnstone());
    Revision second = publish(with(turnstone(), family("turnstone", "Renamed")));
    assertThat(instance.history().edits(second.number()))
        .extracting(EntryEdit::ref)
        .containsExactly(new EntryRef(FAMILY, "turnstone"));
  }

  @Test
  void aRevisionKeepsWhoProposedAndWhoApprovedIt() {
    Revision published =
        instance
            .publication()
            .publish(
                Edition.of("With a note", null, turnstone())
                    .by(Contributor.named("Åsa"), Contributor.named("Bo")));
    assertThat(published.note()).isEqualTo("With a note");
    assertThat(published.proposedBy().name()).isEqualTo("Åsa");
    assertThat(published.approvedBy().name()).isEqualTo("Bo");
    assertThat(instance.snapshots().revisions().get(0)).isEqualTo(published);
    assertThat(instance.snapshots().revisions())
        .extracting(Revision::number)
        .isSortedAccordingTo(Comparator.reverseOrder());
  }

  @Test
  void anEntryHasItsVersionsOldestFirst() {
    Family named = family("turnstone", "Turnstone");
    Family renamed = family("turnstone", "Renamed");
    int first = publish(List.of(named)).number();
    publish(List.of(family("other", "Other")));
    publish(List.of(renamed));
    withdraw(FAMILY, "turnstone");
    publish(List.of(named));

    assertThat(instance.history().of(FAMILY, "turnstone"))
        .endsWith(
            new VersionSpan(first, first + 2, named),
            new VersionSpan(first + 2, first + 3, renamed),
            new VersionSpan(first + 4, VersionSpan.OPEN, named));
    assertThat(instance.history().of(FAMILY, "never-heard-of")).isEmpty();
    assertThat(instance.history().of(VARIANT, "turnstone")).isEmpty();
  }

  @Test
  void aRevisionTellsWhatItDidToEachEntry() {
    Family named = family("turnstone", "Turnstone");
    Family renamed = family("turnstone", "Renamed");
    Family gone = family("gone", "Gone");
    Family added = family("added", "Added");
    publish(List.of(named, gone));
    Revision revision =
        instance
            .publication()
            .publish(
                Edition.of("Three things", "Åsa", List.of(renamed, added))
                    .withdrawing(List.of(EntryRef.of(gone))));

    assertThat(instance.history().edits(revision.number()))
        .containsExactly(
            new EntryEdit(EntryRef.of(added), null, added),
            new EntryEdit(EntryRef.of(gone), gone, null),
            new EntryEdit(EntryRef.of(named), named, renamed));
  }

  @Test
  void aPictureIsFoundByItsContentAlsoOnceItIsReplaced() {
    PictureFile red = new PictureFile("latch.svg", "image/svg+xml", new byte[] {1, 2, 3});
    PictureFile blue = new PictureFile("latch.svg", "image/svg+xml", new byte[] {4, 5});
    int first = publishPictures(red).number();
    publishPictures(blue);

    assertThat(instance.snapshots().head().catalogue().records().pictures())
        .containsExactly(blue.picture());
    assertThat(storedAt(first).pictures()).containsExactly(red.picture());
    StoredPicture stored = instance.pictures().find(red.picture().sha256()).orElseThrow();
    assertThat(stored.bytes()).containsExactly(1, 2, 3);
    assertThat(stored.mediaType()).isEqualTo("image/svg+xml");
    assertThat(instance.pictures().find("00")).isEmpty();
  }

  @Test
  void publicationsFromManyThreadsGetConsecutiveNumbers() throws Exception {
    int before = instance.snapshots().head().number();
    ExecutorService threads = Executors.newFixedThreadPool(8);
    try {
      List<Future<Revision>> all =
          threads.invokeAll(
              IntStream.range(0, 40)
                  .<Callable<Revision>>mapToObj(
                      i -> () -> publish(List.of(family("family-" + i % 5, "Try " + i))))
                  .toList());
      List<Integer> numbers = new ArrayList<>();
      for (Future<Revision> one : all) {
        numbers.add(one.get().number());
      }
      assertThat(numbers)
          .containsExactlyInAnyOrderElementsOf(
              IntStream.rangeClosed(before + 1, before + 40).boxed().toList());
    } finally {
      threads.shutdown();
    }
    assertThat(instance.snapshots().head().number()).isEqualTo(before + 40);
    assertThat(readBack()).isEqualTo(instance.snapshots().head().catalogue().records());
  }

  @Test
  void aPublicationWithErrorsIsRefusedWithItsFindingsAndLeavesNothing() {
    Snapshot before = instance.snapshots().head();
    assertThatThrownBy(() -> publish(List.of(variant("lost", "no-such-family", 1960, 1961))))
        .isInstanceOfSatisfying(
            RefusedPublication.class,
            refused ->
                assertThat(refused.findings())
                    .extracting(Finding::code)
                    .contains(Finding.Code.UNKNOWN_REFERENCE));
    assertNothingStoredSince(before);
  }

  @Test
  void anEntryPutTwiceIsRefused() {
    Snapshot before = instance.snapshots().head();
    assertThatThrownBy(() -> publish(List.of(family("twice", "One"), family("twice", "Two"))))
        .isInstanceOf(RefusedPublication.class);
    assertNothingStoredSince(before);
  }

  @Test
  void aPublicationThatFailsHalfwayLeavesNothing() {
    Snapshot before = instance.snapshots().head();
    Picture tooLong = new Picture("late.svg", "image/svg+xml", "f".repeat(65));
    Edition edition =
        Edition.of("Fails at its last step", "Åsa", turnstone())
            .withPictures(List.of(new PictureFile(tooLong, new byte[] {1})));
    assertThatThrownBy(() -> instance.publication().publish(edition))
        .isInstanceOf(DataAccessException.class);
    assertNothingStoredSince(before);
  }

  @Test
  void aPublicationInsideALargerTransactionIsSeenOnlyOnceThatIsCommitted() {
    Snapshot before = instance.snapshots().head();
    instance
        .transactions()
        .executeWithoutResult(
            status -> {
              publish(List.of(family("first", "First")));
              publish(List.of(family("second", "Second")));
              assertThat(instance.snapshots().head()).isEqualTo(before);
              assertThatThrownBy(() -> instance.snapshots().at(before.number() + 1))
                  .isInstanceOf(UnknownRevision.class);
              status.setRollbackOnly();
            });
    assertNothingStoredSince(before);

    instance
        .transactions()
        .executeWithoutResult(
            status -> {
              publish(List.of(family("first", "First")));
              publish(List.of(family("second", "Second")));
            });
    assertThat(instance.snapshots().head().number()).isEqualTo(before.number() + 2);
    assertThat(readBack()).isEqualTo(instance.snapshots().head().catalogue().records());
  }

  @Test
  void whatIsNotPublishedCannotBeWithdrawn() {
    assertThatThrownBy(() -> withdraw(FAMILY, "never-heard-of"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("There is no published family 'never-heard-of' to withdraw");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "update family_version set name = 'Another'",
        "update family_version set until_revision = until_revision - 1"
            + " where until_revision < 2147483647",
        "delete from family_version",
        "update cut_in set first_year = 1900",
        "delete from offered",
        "update change_citation set note = 'Another'",
        "update entry set entry_key = 'another'",
        "delete from blob",
        "update revision set note = 'Another'"
      })
  void whatIsPublishedIsNeverChangedNorDeleted(String statement) {
    List<Entry> entries = new ArrayList<>(EveryField.filled());
    entries.addAll(turnstone());
    instance
        .publication()
        .publish(Edition.of("To be kept", "Åsa", entries).withPictures(EveryField.pictures()));
    publish(List.of(family("turnstone", "Renamed")));
    Records published = readBack();

    assertThatThrownBy(() -> instance.jdbc().sql(statement).update())
        .isInstanceOf(DataAccessException.class);
    assertThat(readBack()).isEqualTo(published);
  }

  @Test
  void anotherInstanceSeesANewHead() {
    publish(turnstone());
    try (Instance other = Instance.on(database)) {
      assertThat(other.snapshots().head().catalogue().records()).isEqualTo(readBack());
      publish(List.of(family("turnstone", "Renamed")));
      await()
          .atMost(Duration.ofMinutes(2))
          .until(() -> other.snapshots().head().number() == instance.snapshots().head().number());
      assertThat(other.snapshots().head().catalogue().records()).isEqualTo(readBack());
      Revision third =
          other
              .publication()
              .publish(Edition.of("Elsewhere", "Bo", List.of(family("third", "Third"))));
      publish(List.of(family("fourth", "Fourth")));
      assertThat(instance.snapshots().head().number()).isEqualTo(third.number() + 1);
      assertThat(readBack()).isEqualTo(instance.snapshots().head().catalogue().records());
    }
  }

  private Revision publish(List<? extends Entry> entries) {
    return instance.publication().publish(Edition.of("A test", "Åsa", entries));
  }

  private Revision publishPictures(PictureFile... files) {
    return instance
        .publication()
        .publish(Edition.of("Pictures", "Åsa", List.of()).withPictures(List.of(files)));
  }

  private Revision withdraw(EntryKind kind, String key) {
    return instance
        .publication()
        .publish(
            Edition.of("Withdrawn", "Åsa", List.of())
                .withdrawing(List.of(new EntryRef(kind, key))));
  }

  private static Family family(String key, String name) {
    return new Family(
        key, "Lindmark Aero", name, null, YearMeaning.MODEL_YEAR, null, null, List.of());
  }

  private void assertNothingStoredSince(Snapshot before) {
    assertThat(instance.snapshots().head()).isEqualTo(before);
    assertThat(instance.snapshots().revisions())
        .extracting(Revision::number)
        .allMatch(number -> number <= before.number());
    assertThat(readBack()).isEqualTo(before.catalogue().records());
    assertThat(versionsSince(before.number())).isZero();
  }

  private int versionsSince(int revision) {
    return instance
        .jdbc()
        .sql("select count(*) from family_version where since_revision > :revision")
        .param("revision", revision)
        .query(Integer.class)
        .single();
  }

  private Records storedAt(int revision) {
    return instance.stored().at(revision, Snapshot.NONE).catalogue().records();
  }

  /** What another instance would read. */
  private Records readBack() {
    return instance.stored().newest(Snapshot.NONE).catalogue().records();
  }
}
