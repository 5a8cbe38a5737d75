package club.yearline.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import club.yearline.accounts.AccountClosed;
import club.yearline.accounts.Actor;
import club.yearline.effectivity.Position;
import club.yearline.fleet.UsedObservation.Place;
import club.yearline.fleet.UsedObservation.Use;
import club.yearline.fleet.UsedObservation.Uses;
import club.yearline.testing.Database;
import club.yearline.uploads.Evidence;
import club.yearline.web.Refusal;
import java.util.ArrayList;
import java.util.List;
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

/** What the register keeps, and what it gives away, on whichever database. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class RegisterContract {

  private Hangar hangar;

  abstract Database freshDatabase();

  @BeforeAll
  void open() {
    hangar = Hangar.on(freshDatabase());
  }

  @AfterAll
  void close() {
    hangar.close();
  }

  @BeforeEach
  void empty() {
    hangar.empty();
  }

  // Storing an inspection

  @Test
  void anInspectionOfANewAirframeRegistersItForItsInspectorOnly() {
    long id = hangar.inspected(hangar.member, "lt 42", "rotary");
    assertThat(hangar.register().own(hangar.member))
        .containsExactly(new Registered(id, "la-2b", 1964, "lt", "LT-0042", null, true, false));
    assertThat(hangar.register().own(hangar.other)).isEmpty();
    assertThat(hangar.register().find(hangar.other, id)).isEmpty();
    assertThat(hangar.register().find(hangar.keeper, id)).isEmpty();
  }

  @Test
  void anInspectionSentAgainIsStoredOnce() {
    Inspected inspected = hangar.inspection("LT-0042", "rotary");
    long id = hangar.register().store(hangar.member, inspected);
    assertThat(hangar.register().stored(hangar.member, inspected.id())).hasValue(id);
    assertThat(hangar.register().store(hangar.member, inspected)).isEqualTo(id);
    assertThat(hangar.count("airframe")).isEqualTo(1);
    assertThat(hangar.count("observation")).isEqualTo(1);
  }

  @Test
  void anInspectionSentTwiceAtOneMomentIsStoredOnce() throws Exception {
    for (int round = 0; round < 5; round++) {
      hangar.empty();
      Inspected inspected = hangar.inspection("LT-0042", "rotary");
      Callable<Long> sending = () -> hangar.register().store(hangar.member, inspected);
      List<Long> outcomes = atOnce(sending, sending);
      assertThat(outcomes.get(0)).isEqualTo(outcomes.get(1));
      assertThat(hangar.count("observation")).isEqualTo(1);
    }
  }

  @Test
  void theNumberOfAnInspectionIsItsInspectorsOwn() {
    Inspected inspected = hangar.inspection("LT-0042", "rotary");
    long id = hangar.register().store(hangar.member, inspected);
    assertThat(hangar.register().stored(hangar.other, inspected.id())).isEmpty();
    assertThat(hangar.register().store(hangar.other, inspected)).isNotEqualTo(id);
    assertThat(hangar.count("airframe")).isEqualTo(2);
  }

  @Test
  void anInspectionOfASerialThatTheInspectorHasIsKeptWithThatAirframe() {
    long id = hangar.inspected(hangar.member, "LT-0042", "rotary");
    assertThat(hangar.inspected(hangar.member, "LT-42", "sliding")).isEqualTo(id);
    assertThat(hangar.count("airframe")).isEqualTo(1);
    assertThat(hangar.count("observation")).isEqualTo(2);
  }

  @Test
  void anInspectionIsStoredWhollyOrNotAtAll() {
    Seen good = Hangar.latch("rotary", Hangar.DAY);
    Seen bad = new Seen("door-latch", "velcro", Hangar.DAY, null, null, List.of());
    assertRefused(
        422,
        () ->
            hangar
                .register()
                .store(
                    hangar.member,
                    Inspected.of(
                        UUID.randomUUID(), hangar.airframe("LT-0042"), List.of(good, bad))));
    assertThat(hangar.count("airframe")).isZero();
    assertThat(hangar.count("observation")).isZero();
    assertThat(hangar.count("stored_inspection")).isZero();
  }

  @Test
  void nobodyStoresAnInspectionOnAnAirframeOfAnother() {
    long id = hangar.inspected(hangar.member, "LT-0042", "rotary");
    Inspected forged =
        Inspected.of(UUID.randomUUID(), id, List.of(Hangar.latch("sliding", Hangar.DAY)));
    assertRefused(404, () -> hangar.register().store(hangar.other, forged));
    assertRefused(404, () -> hangar.register().store(hangar.keeper, forged));
    hangar.share(hangar.member, id);
    assertRefused(403, () -> hangar.register().store(hangar.other, forged));
    assertThat(hangar.count("observation")).isEqualTo(1);
  }

  @Test
  void photographsAreKeptOncePerObservation() {
    Evidence one = new Evidence("latch.jpg", "image/jpeg", new byte[] {1, 2});
    Evidence same = new Evidence("again.jpg", "image/jpeg", new byte[] {1, 2});
    Evidence other = new Evidence("hinge.jpg", "image/jpeg", new byte[] {3});
    long id =
        hangar
            .register()
            .store(
                hangar.member,
                Inspected.of(
                    UUID.randomUUID(),
                    hangar.airframe("LT-0042"),
                    List.of(Hangar.latch("rotary", Hangar.DAY, one, same, other))));
    assertThat(hangar.bean(Photographs.class).list(id))
        .extracting(PhotographLine::name)
        .containsExactly("latch.jpg", "hinge.jpg");
  }

  @Test
  void anAirframeWithoutASerialIsRegisteredByItsYear() {
    Position year = Position.of(hangar.position("LT-0042").variant(), 1964);
    Inspected inspected =
        Inspected.of(UUID.randomUUID(), new NewAirframe(year, null, null), List.of());
    long first = hangar.register().store(hangar.member, inspected);
    Inspected second =
        Inspected.of(UUID.randomUUID(), new NewAirframe(year, null, null), List.of());
    assertThat(hangar.register().store(hangar.member, second)).isNotEqualTo(first);
    assertThat(hangar.register().find(hangar.member, first).orElseThrow().serial()).isNull();
  }

  // What was seen, as evidence

  @Test
  void theLatestObservationOfEachAirframeCountsPrivateOnesIncluded() {
    long first = hangar.inspected(hangar.member, "LT-0042", "sliding");
    hangar.inspected(hangar.other, "LT-0007", "sliding");
    Seen later = Hangar.latch("rotary", Hangar.DAY.plusDays(1));
    hangar.register().store(hangar.member, Inspected.of(UUID.randomUUID(), first, List.of(later)));
    Seen earlier = Hangar.latch("sliding", Hangar.DAY.minusDays(1));
    hangar
        .register()
        .store(hangar.member, Inspected.of(UUID.randomUUID(), first, List.of(earlier)));
    assertThat(hangar.latches(null))
        .extracting(Sighting::serialText, Sighting::value, Sighting::on)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("LT-0007", "sliding", Hangar.DAY),
            org.assertj.core.groups.Tuple.tuple("LT-0042", "rotary", Hangar.DAY.plusDays(1)));
  }

  @Test
  void anAirframeThatTwoMembersKeepCountsOnceAndIsNamedOnlyIfBothAgree() {
    long mine = hangar.inspected(hangar.member, "LT-0042", "sliding");
    long yours = hangar.inspected(hangar.other, "LT-0042", "rotary");
    assertThat(hangar.latches(null)).singleElement().satisfies(s -> named(s, yours, false));
    hangar.agree(hangar.other, yours);
    assertThat(hangar.latches(null)).singleElement().satisfies(s -> named(s, yours, false));
    hangar.agree(hangar.member, mine);
    assertThat(hangar.latches(null)).singleElement().satisfies(s -> named(s, yours, true));
  }

  private void named(Sighting sighting, long airframe, boolean agreed) {
    assertThat(sighting.airframe()).isEqualTo(airframe);
    assertThat(sighting.mayBeNamed(null)).isEqualTo(agreed);
    assertThat(sighting.mayBeNamed(hangar.keeper)).isEqualTo(agreed);
    assertThat(sighting.mayBeNamed(hangar.other)).isTrue();
  }

  @Test
  void evidenceIsOfOneFeatureSeriesAndVariant() {
    hangar.inspected(hangar.member, "LT-0042", "sliding");
    assertThat(hangar.latches("la-2b")).hasSize(1);
    assertThat(hangar.latches("la-2c")).isEmpty();
    assertThat(hangar.sightings().latest("door-latch", "ltx", null)).isEmpty();
    assertThat(hangar.sightings().latest("gross-weight", "lt", null)).isEmpty();
  }

  // What a correction stands on

  @Test
  void onlyWhatAPublishedCorrectionStandsOnIsTold() {
    hangar.inspected(hangar.member, "LT-0042", "sliding");
    long correction = correction();
    use(correction);
    use(correction);
    assertThat(published()).isEmpty();
    publish(correction);
    assertThat(published()).containsExactly(new UsedObservation(true, Place.INSIDE, true));
  }

  private List<UsedObservation> published() {
    return hangar.sightings().published("door-latch-rotary", "la-2b");
  }

  private void use(long correction) {
    long seen = hangar.latches(null).get(0).observation();
    hangar
        .sightings()
        .use(
            correction,
            new Uses("door-latch-rotary", "la-2b", List.of(new Use(seen, true, Place.INSIDE))));
  }

  /** A correction as the module of that name stores it, which this one cannot ask. */
  private long correction() {
    long id = hangar.jdbc().sql("select nextval('correction_seq')").query(Long.class).single();
    hangar
        .jdbc()
        .sql(
            """
            insert into correction (id, lock_version, author_id, origin, title, state, begun_at,
              changed_at, form_token)
            values (:id, 0, :author, 'typed', 'Later', 'draft', now(), now(), :token)
            """)
        .param("id", id)
        .param("author", hangar.member.id())
        .param("token", UUID.randomUUID().toString())
        .update();
    return id;
  }

  private void publish(long correction) {
    hangar
        .jdbc()
        .sql(
            """
            update correction set state = 'approved', decided_by = author_id, revision = 1
            where id = :id
            """)
        .param("id", correction)
        .update();
  }

  @Test
  void ofADeletedAirframeOnlyWhatAPublishedCorrectionStandsOnRemains() {
    long id = hangar.inspected(hangar.member, "LT-0042", "sliding");
    long published = correction();
    long waiting = correction();
    use(published);
    use(waiting);
    publish(published);
    assertThat(hangar.bean(Keeping.class).whatGoes(hangar.member, id))
        .isEqualTo(new Keeping.Goes(1, 0, 1));
    hangar.bean(Keeping.class).delete(hangar.member, id);
    assertThat(hangar.count("airframe") + hangar.count("observation")).isZero();
    assertThat(published()).containsExactly(new UsedObservation(true, Place.INSIDE, false));
    assertThat(hangar.count("used_observation")).isEqualTo(1);
    assertThat(hangar.latches(null)).isEmpty();
  }

  @Test
  void anObservationThatIsTakenBackLeavesAsMuch() {
    long id = hangar.inspected(hangar.member, "LT-0042", "sliding");
    long published = correction();
    use(published);
    use(correction());
    publish(published);
    long seen = hangar.latches(null).get(0).observation();
    hangar.bean(Observing.class).forget(hangar.member, id, seen);
    assertThat(published()).containsExactly(new UsedObservation(true, Place.INSIDE, false));
    assertThat(hangar.count("used_observation")).isEqualTo(1);
  }

  @Test
  void aClosedAccountTakesItsAirframesObservationsAndPhotographsAlong() {
    Evidence photograph = new Evidence("latch.jpg", "image/jpeg", new byte[] {1});
    Inspected inspected =
        Inspected.of(
            UUID.randomUUID(),
            hangar.airframe("LT-0042"),
            List.of(Hangar.latch("rotary", Hangar.DAY, photograph)));
    hangar.register().store(hangar.member, inspected);
    long kept = hangar.inspected(hangar.other, "LT-0007", "sliding");
    long published = correction();
    use(published);
    publish(published);
    hangar.tell(new AccountClosed(hangar.member.id()));
    assertThat(hangar.register().own(hangar.member)).isEmpty();
    assertThat(hangar.latches(null)).extracting(Sighting::airframe).containsExactly(kept);
    assertThat(hangar.count("photograph")).isZero();
    assertThat(hangar.count("stored_inspection")).isEqualTo(1);
    assertThat(published()).hasSize(1);
  }

  @Test
  void anInspectionWhoseAirframeIsDeletedIsNotStoredAgain() {
    Inspected inspected = hangar.inspection("LT-0042", "rotary");
    long id = hangar.register().store(hangar.member, inspected);
    hangar.bean(Keeping.class).delete(hangar.member, id);
    assertRefused(410, () -> hangar.register().store(hangar.member, inspected));
    assertThat(hangar.count("airframe")).isZero();
  }

  // By registration

  @Test
  void anAirframeIsFoundByItsMarkByItsOwnerAndWhereSharedByAll() {
    Position position = hangar.position("LT-0042");
    long id =
        hangar
            .register()
            .store(
                hangar.member,
                Inspected.of(
                    UUID.randomUUID(), new NewAirframe(position, "qz-ab1", null), List.of()));
    for (String typed : List.of("QZ-AB1", "qzab1", "Qz AB1")) {
      assertThat(marked(hangar.member, typed)).containsExactly(id);
      assertThat(marked(hangar.other, typed)).isEmpty();
    }
    hangar.share(hangar.member, id);
    assertThat(marked(hangar.other, "qzab1")).containsExactly(id);
    assertThat(marked(hangar.member, "qzab")).isEmpty();
    assertThat(marked(hangar.member, "--")).isEmpty();
  }

  private List<Long> marked(Actor actor, String typed) {
    return hangar.register().marked(actor, typed).stream().map(Registered::id).toList();
  }

  // How the tests speak

  static void assertRefused(int status, ThrowingCallable action) {
    assertThatThrownBy(action)
        .isInstanceOfSatisfying(
            Refusal.class, refusal -> assertThat(refusal.status().value()).isEqualTo(status));
  }

  private static <T> List<T> atOnce(Callable<T> one, Callable<T> two) throws Exception {
    ExecutorService people = Executors.newFixedThreadPool(2);
    try {
      CyclicBarrier start = new CyclicBarrier(2);
      List<Future<T>> futures = new ArrayList<>();
      for (Callable<T> action : List.of(one, two)) {
        futures.add(
            people.submit(
                () -> {
                  start.await();
                  return action.call();
                }));
      }
      return List.of(futures.get(0).get(), futures.get(1).get());
    } finally {
      people.shutdownNow();
    }
  }
}
