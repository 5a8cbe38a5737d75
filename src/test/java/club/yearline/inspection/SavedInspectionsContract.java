package club.yearline.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.Yearline;
import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.catalog.Edition;
import club.yearline.catalog.Publication;
import club.yearline.catalog.Snapshots;
import club.yearline.effectivity.Located;
import club.yearline.effectivity.Question;
import club.yearline.fleet.Inspected;
import club.yearline.fleet.NewAirframe;
import club.yearline.fleet.Register;
import club.yearline.testing.Database;
import club.yearline.testing.Sample;
import club.yearline.testing.SignedIn;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Saved inspections, on whichever database. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class SavedInspectionsContract {

  private static final LocalDate DAY = LocalDate.of(2026, 2, 28);

  private ConfigurableApplicationContext context;
  private SavedInspections saved;
  private Actor member;
  private Actor other;
  private long airframe;

  abstract Database freshDatabase();

  @BeforeAll
  void open() {
    Database database = freshDatabase();
    context =
        new SpringApplicationBuilder(Yearline.class)
            .web(WebApplicationType.NONE)
            .run(
                "--yearline.demo=false",
                "--spring.datasource.url=" + database.url(),
                "--spring.datasource.username=" + database.user(),
                "--spring.datasource.password=" + database.password());
    saved = context.getBean(SavedInspections.class);
    member = SignedIn.person(context, "Mette Member", Role.MEMBER);
    other = SignedIn.person(context, "Odd Other", Role.MEMBER);
    context.getBean(Publication.class).publish(Edition.of("Published", "Å", Sample.turnstone()));
  }

  @AfterAll
  void close() {
    context.close();
  }

  @BeforeEach
  void empty() {
    jdbc().sql("delete from stored_inspection").update();
    jdbc().sql("delete from airframe").update();
    airframe = register(member);
  }

  @Test
  void anInspectionIsReadBackAsItWasSaved() {
    SavedInspection whole =
        made(UUID.randomUUID(), 1964, "LT-0042", "door-latch:hook", "power:145");
    SavedInspection bare = made(UUID.randomUUID(), null, null);
    SavedInspection foreign = made(UUID.randomUUID(), 1964, "Ł–42 “x”", "å:é");
    for (SavedInspection one : List.of(whole, bare, foreign)) {
      saved.save(member, one);
      assertThat(saved.find(member, one.id())).contains(one);
    }
  }

  @Test
  void anInspectionSavedAgainStaysAsItIs() {
    UUID id = UUID.randomUUID();
    SavedInspection first = made(id, 1964, null, "door-latch:hook");
    saved.save(member, first);
    saved.save(member, made(id, 1965, null, "door-latch:rotary"));
    assertThat(saved.of(member)).containsExactly(first);
  }

  @Test
  void anInspectionSavedTwiceAtOneMomentIsSavedOnce() throws Exception {
    for (int round = 0; round < 5; round++) {
      SavedInspection one = made(UUID.randomUUID(), 1964, null, "door-latch:hook");
      CyclicBarrier start = new CyclicBarrier(2);
      Callable<Boolean> saving =
          () -> {
            start.await();
            saved.save(member, one);
            return true;
          };
      ExecutorService two = Executors.newFixedThreadPool(2);
      try {
        for (Future<Boolean> done : two.invokeAll(List.of(saving, saving))) {
          assertThat(done.get()).isTrue();
        }
      } finally {
        two.shutdown();
      }
      assertThat(saved.find(member, one.id())).contains(one);
      assertThat(saved.of(member)).hasSize(round + 1);
    }
  }

  @Test
  void anInspectionIsItsInspectorsOwnEvenUnderANumberThatAnotherHasUsed() {
    SavedInspection one = made(UUID.randomUUID(), 1964, null, "door-latch:hook");
    saved.save(member, one);
    assertThat(saved.find(other, one.id())).isEmpty();
    assertThat(saved.of(other)).isEmpty();
    long others = register(other);
    SavedInspection theirs =
        new SavedInspection(one.id(), others, 1, "la-2b", 1963, null, List.of(), DAY);
    saved.save(other, theirs);
    assertThat(saved.find(member, one.id())).contains(one);
    assertThat(saved.find(other, one.id())).contains(theirs);
  }

  @Test
  void theLatestFiftyAreListedTheLatestFirst() {
    List<UUID> ids = new ArrayList<>();
    for (int i = 0; i < 52; i++) {
      ids.add(0, UUID.randomUUID());
      saved.save(member, made(ids.get(0), 1964, null));
      jdbc()
          .sql(
              "update inspection set saved_at = saved_at + "
                  + i
                  + " * interval '1' hour"
                  + " where id = :id")
          .param("id", ids.get(0))
          .update();
    }
    assertThat(saved.of(member))
        .extracting(SavedInspection::id)
        .containsExactlyElementsOf(ids.subList(0, 50));
  }

  @Test
  void anInspectionGoesWithItsAirframe() {
    SavedInspection one = made(UUID.randomUUID(), 1964, null, "door-latch:hook");
    saved.save(member, one);
    jdbc().sql("delete from airframe where id = :id").param("id", airframe).update();
    assertThat(saved.find(member, one.id())).isEmpty();
  }

  private SavedInspection made(
      UUID id, @Nullable Integer year, @Nullable String serial, String... seen) {
    return new SavedInspection(id, airframe, 1, "la-2b", year, serial, List.of(seen), DAY);
  }

  private long register(Actor owner) {
    Located located =
        context
            .getBean(Snapshots.class)
            .head()
            .catalogue()
            .locate(new Question(null, null, "LT-0042"));
    NewAirframe fresh = new NewAirframe(((Located.Found) located).position(), null, null);
    return context
        .getBean(Register.class)
        .store(owner, Inspected.of(UUID.randomUUID(), fresh, List.of()));
  }

  private JdbcClient jdbc() {
    return context.getBean(JdbcClient.class);
  }
}
