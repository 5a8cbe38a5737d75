package club.yearline.accounts;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.Yearline;
import club.yearline.accounts.Membership.Entrant;
import club.yearline.accounts.OneTimeLink.Kind;
import club.yearline.testing.Database;
import club.yearline.web.Refusal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What accounts must keep, whatever the database and however many instances. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class AccountsContract {

  private static final ClientAddress HERE = new ClientAddress("203.0.113.7");
  private static final String PASSWORD = "hangar doors face the wind";

  private Database database;
  private ConfigurableApplicationContext one;
  private int people;

  abstract Database freshDatabase();

  @BeforeAll
  void start() {
    database = freshDatabase();
    one = instance();
  }

  @BeforeEach
  void nobodyIsSlowed() {
    jdbc().sql("delete from failed_sign_in").update();
  }

  @AfterAll
  void stop() {
    one.close();
  }

  private ConfigurableApplicationContext instance() {
    return new SpringApplicationBuilder(Yearline.class)
        .properties("logging.level.root=warn")
        .run(
            "--server.port=0",
            "--yearline.demo=false",
            "--spring.datasource.url=" + database.url(),
            "--spring.datasource.username=" + database.user(),
            "--spring.datasource.password=" + database.password());
  }

  private <T> T bean(Class<T> type) {
    return one.getBean(type);
  }

  private JdbcClient jdbc() {
    return bean(JdbcClient.class);
  }

  private Visitor visitor(ConfigurableApplicationContext instance) {
    return new Visitor(
        "http://localhost:" + instance.getEnvironment().getProperty("local.server.port"));
  }

  private Account person(Role role) {
    String email = "person" + ++people + "@club.example";
    long id =
        bean(Accounts.class)
            .add("Person " + people, EmailAddress.of(email).orElseThrow(), hash(), role);
    return bean(Accounts.class).find(id).orElseThrow();
  }

  private String hash() {
    return bean(Hashing.class).hash(PASSWORD);
  }

  private static <T> List<T> atOnce(int times, Callable<T> work) throws Exception {
    ExecutorService crowd = Executors.newFixedThreadPool(times);
    try {
      CyclicBarrier barrier = new CyclicBarrier(times);
      List<Future<T>> futures = new ArrayList<>();
      for (int i = 0; i < times; i++) {
        futures.add(
            crowd.submit(
                () -> {
                  barrier.await();
                  return work.call();
                }));
      }
      List<T> results = new ArrayList<>();
      for (Future<T> future : futures) {
        results.add(future.get());
      }
      return results;
    } finally {
      crowd.shutdown();
    }
  }

  private static String codeOf(Runnable work) {
    try {
      work.run();
      return "done";
    } catch (Refusal e) {
      return e.code();
    }
  }

  @Test
  void anAddressHasOneAccountWhateverItsCapitals() {
    Account account = person(Role.MEMBER);
    EmailAddress loud = EmailAddress.of(account.email().toUpperCase()).orElseThrow();
    assertThat(bean(Accounts.class).withEmail(loud)).contains(account);
    assertThat(
            org.assertj.core.api.Assertions.catchThrowable(
                () -> bean(Accounts.class).add("Other", loud, "hash", Role.MEMBER)))
        .isInstanceOf(DuplicateKeyException.class);
  }

  @Test
  void aSessionIsGoodOnEveryInstanceAndOutlivesOne() {
    Account account = person(Role.MEMBER);
    Visitor visitor = visitor(one).signIn(account.email(), PASSWORD);
    assertThat(visitor.path()).isEqualTo("/account");
    String cookie = visitor.cookie("yearline").orElseThrow().getValue();
    try (ConfigurableApplicationContext two = instance()) {
      Sessions sessions = two.getBean(Sessions.class);
      assertThat(sessions.of(account.id(), null)).hasSize(1);
      sessions.endAll(account.id());
    }
    assertThat(visitor.open("/account").path()).isEqualTo("/sign-in");
    assertThat(cookie).isNotEmpty();
  }

  @Test
  void settingsReachEveryInstance() throws Exception {
    try (ConfigurableApplicationContext two = instance()) {
      ClubSettings now = bean(Club.class).settings();
      assertThat(
              bean(Club.class)
                  .change(
                      new ClubSettings("Turnstone Owners", true, true, true, 90, now.version())))
          .isTrue();
      while (!two.getBean(Club.class).isClosed()) {
        Thread.sleep(50);
      }
      assertThat(two.getBean(Club.class).name()).isEqualTo("Turnstone Owners");
      assertThat(two.getBean(Club.class).isSingleKeeper()).isTrue();
      assertThat(two.getBean(Club.class).change(now)).isFalse();
    }
    ClubSettings now = bean(Club.class).settings();
    bean(Club.class).change(new ClubSettings("", false, false, false, 365, now.version()));
  }

  @Test
  void ofManyWhoUseALinkAtOnceOneGetsIn() throws Exception {
    Links links = bean(Links.class);
    String path = links.make(Kind.INVITATION, null, null, null);
    OneTimeLink link = links.usable(path.substring(path.lastIndexOf('/') + 1), Kind.INVITATION);
    Entrant entrant =
        new Entrant(
            "Crowd", EmailAddress.of("crowd" + people + "@club.example").orElseThrow(), "h");
    List<String> results =
        atOnce(6, () -> codeOf(() -> bean(Membership.class).join(link, entrant, HERE)));
    assertThat(results).containsOnlyOnce("done");
    assertThat(Collections.frequency(results, "link-spent")).isEqualTo(5);
  }

  @Test
  void twoKeepersWhoLeaveAtOnceLeaveOne() throws Exception {
    Account first = person(Role.KEEPER);
    Account second = person(Role.KEEPER);
    List<Account> leaving = Collections.synchronizedList(new ArrayList<>(List.of(first, second)));
    List<String> results =
        atOnce(
            2,
            () -> {
              Account account = leaving.remove(0);
              return codeOf(() -> bean(Membership.class).close(account.actor(), account, HERE));
            });
    assertThat(results).containsExactlyInAnyOrder("done", "last-keeper");
    assertThat(bean(Accounts.class).hasKeeper()).isTrue();
    jdbc().sql("update person set role = 'MEMBER' where role = 'KEEPER'").update();
  }

  @Test
  void aClosedAccountLeavesNothingThatTellsWhoItWas() {
    Account account = person(Role.MEMBER);
    person(Role.KEEPER);
    bean(SecondFactors.class).prepare(account.id(), OneTimeCodes.newSecret());
    bean(SecondFactors.class).switchOn(account.id());
    bean(Links.class).make(Kind.RESET, account.id(), account.email(), null);
    bean(JoinRequests.class)
        .add(account.name(), EmailAddress.of(account.email()).orElseThrow(), "It is me.");
    bean(Membership.class).close(account.actor(), account, HERE);
    for (String table : List.of("person", "one_time_link", "join_request", "security_event")) {
      assertThat(jdbc().sql("select * from " + table).query().listOfRows().toString())
          .as(table)
          .doesNotContain(account.email())
          .doesNotContain(account.name() + ",");
    }
    assertThat(bean(People.class).nameOf(account.id())).isEqualTo("a former member");
    assertThat(bean(People.class).namesOf(List.of(account.id())))
        .containsEntry(account.id(), "a former member");
    assertThat(bean(People.class).mailOf(account.id())).isEmpty();
    assertThat(
            jdbc()
                .sql("select count(*) from recovery_code where person_id = :id")
                .param("id", account.id())
                .query(Integer.class)
                .single())
        .isZero();
    jdbc().sql("update person set role = 'MEMBER' where role = 'KEEPER'").update();
  }

  @Test
  void peopleAreFoundByWhatTheyMayDo() {
    Account member = person(Role.MEMBER);
    Account moderator = person(Role.MODERATOR);
    assertThat(bean(People.class).withRole(Role.MODERATOR))
        .contains(moderator.actor())
        .doesNotContain(member.actor());
    assertThat(bean(People.class).mailOf(member.id())).contains(member.email());
    assertThat(bean(People.class).namesOf(List.of(member.id(), 123_456L)))
        .containsEntry(member.id(), member.name())
        .containsEntry(123_456L, "a former member");
  }

  @Test
  void aCodeIsTakenOnceHoweverOftenItIsSentAtOnce() throws Exception {
    Account account = person(Role.MEMBER);
    SecondFactors factors = bean(SecondFactors.class);
    factors.prepare(account.id(), OneTimeCodes.newSecret());
    List<String> recovery = factors.switchOn(account.id());
    Account ready = bean(Accounts.class).find(account.id()).orElseThrow();
    String code = OneTimeCodes.code(factors.secretOf(ready).orElseThrow(), Instant.now());
    assertThat(atOnce(6, () -> factors.accepts(ready, code))).containsOnlyOnce(true);
    assertThat(atOnce(6, () -> factors.acceptsRecovery(ready.id(), recovery.get(3))))
        .containsOnlyOnce(true);
    assertThat(factors.recoveryCodesLeft(ready.id())).isEqualTo(9);
  }

  @Test
  void guessesAtOnceAreAllCountedAndThenSlowedOnEveryInstance() throws Exception {
    FailedSignIns failed = bean(FailedSignIns.class);
    atOnce(8, () -> failed.count("account somebody@club.example"));
    for (int i = 0; i < 5; i++) {
      failed.count("account somebody@club.example");
    }
    assertThat(failed.count("account somebody@club.example")).isPositive();
    assertThat(failed.count("account other@club.example")).isZero();
    failed.forget("account somebody@club.example");
    assertThat(failed.count("account somebody@club.example")).isZero();
  }

  @Test
  void theWaitGrowsToAQuarterOfAnHourAndNoFurther() {
    assertThat(FailedSignIns.waitAfter(4)).isZero();
    assertThat(FailedSignIns.waitAfter(5)).isEqualTo(Duration.ofSeconds(15));
    assertThat(FailedSignIns.waitAfter(7)).isEqualTo(Duration.ofSeconds(60));
    assertThat(FailedSignIns.waitAfter(1_000_000)).isEqualTo(Duration.ofMinutes(15));
  }

  @Test
  void oldEventsAreForgotten() {
    SecurityLog log = bean(SecurityLog.class);
    jdbc()
        .sql("insert into security_event (happened_at, kind) values (:old, 'SIGNED_OUT')")
        .param("old", Accounts.now().minusDays(400))
        .update();
    long before = log.size();
    bean(Housekeeping.class).tidy();
    assertThat(log.size()).isEqualTo(before - 1);
  }

  @Test
  void aVisitorComesBackToThePageFromWhichHeSignedIn() {
    Account account = person(Role.MEMBER);
    Visitor visitor = visitor(one).open("/find?q=swept%20fin%20%26%20more");
    visitor.open(visitor.page().select("a.desk").attr("href"));
    visitor.submit("/sign-in", "email", account.email(), "password", PASSWORD);
    assertThat(visitor.path()).isEqualTo("/find");
    assertThat(visitor.page().select("main input[name=q]").val()).isEqualTo("swept fin & more");
  }

  @Test
  void aClosedClubShowsAVisitorSignInAndNothingOfTheCatalogue() {
    ClubSettings now = bean(Club.class).settings();
    bean(Club.class).change(new ClubSettings("", true, false, false, 365, now.version()));
    try {
      Visitor visitor = visitor(one).open("/families");
      assertThat(visitor.path()).isEqualTo("/sign-in");
      assertThat(visitor.page().select("form[role=search], .masthead nav")).isEmpty();
      assertThat(visitor.open("/no-such-page").status()).isEqualTo(404);
      assertThat(visitor.page().select("form[role=search], .masthead nav")).isEmpty();
      assertThat(visitor.open("/api/v1/families").status()).isEqualTo(401);
      assertThat(visitor.text()).contains("not open to you");
      assertThat(visitor.open("/feed").status()).isEqualTo(401);
      Account account = person(Role.MEMBER);
      visitor.signIn(account.email(), PASSWORD);
      assertThat(visitor.open("/families").status()).isEqualTo(200);
      assertThat(visitor.open("/api/v1/families").status()).isEqualTo(200);
    } finally {
      ClubSettings closed = bean(Club.class).settings();
      bean(Club.class).change(new ClubSettings("", false, false, false, 365, closed.version()));
    }
  }

  /** The form came without a session; a browser of the same person signs in and sends it again. */
  @Test
  void whatWasTypedOutlivesALostSession() {
    Account account = person(Role.MEMBER);
    Visitor visitor = visitor(one).signIn(account.email(), PASSWORD);
    visitor.open("/account");
    visitor.lose("yearline");
    visitor.submit("/account/name", "name", "Ann <b>Other</b> & “Co”");
    assertThat(visitor.status()).isEqualTo(401);
    assertThat(visitor.text()).contains("What you typed is kept");
    visitor.submit("/sign-in", "email", account.email(), "password", "wrong one, typed badly");
    assertThat(visitor.text())
        .contains("do not belong together")
        .contains("What you typed is kept");
    visitor.submit("/sign-in", "email", account.email(), "password", PASSWORD);
    assertThat(visitor.path()).isEqualTo("/sign-in/resume");
    assertThat(visitor.text())
        .contains("Ann <b>Other</b> & “Co”")
        .contains("Nothing has been sent");
    assertThat(bean(People.class).nameOf(account.id())).isEqualTo(account.name());
    visitor.submit("/account/name");
    assertThat(visitor.text()).contains("The name is changed");
    assertThat(bean(People.class).nameOf(account.id())).isEqualTo("Ann <b>Other</b> & “Co”");
  }

  @Test
  void aFormOfAnOlderSessionIsShownAgainBeforeItCounts() {
    Account account = person(Role.MEMBER);
    Visitor visitor = visitor(one).signIn(account.email(), PASSWORD);
    visitor.open("/account");
    visitor.post("/account/name", "_csrf", "of another session", "name", "New Name");
    assertThat(visitor.status()).isEqualTo(403);
    assertThat(bean(People.class).nameOf(account.id())).isEqualTo(account.name());
    visitor.submit("/account/name");
    assertThat(bean(People.class).nameOf(account.id())).isEqualTo("New Name");
  }

  @Test
  void theSessionOfBeforeSigningInIsWorthNothingAfterwards() {
    Account account = person(Role.MEMBER);
    SecondFactors factors = bean(SecondFactors.class);
    factors.prepare(account.id(), OneTimeCodes.newSecret());
    List<String> recovery = factors.switchOn(account.id());
    Visitor visitor = visitor(one).signIn(account.email(), PASSWORD);
    assertThat(visitor.path()).isEqualTo("/sign-in/code");
    String before = visitor.cookie("yearline").orElseThrow().getValue();
    assertThat(visitor.open("/account").path()).isEqualTo("/sign-in");
    visitor.open("/sign-in/code").submit("/sign-in/code", "code", "000000");
    assertThat(visitor.text()).contains("That code is not right");
    visitor.submit("/sign-in/code", "code", recovery.get(0));
    assertThat(visitor.path()).isEqualTo("/account");
    assertThat(visitor.cookie("yearline").orElseThrow().getValue()).isNotEqualTo(before);
    Visitor thief = visitor(one);
    thief.take("yearline", before);
    assertThat(thief.open("/account").path()).isEqualTo("/sign-in");
  }
}
