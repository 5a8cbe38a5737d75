package club.yearline.accounts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import club.yearline.Yearline;
import club.yearline.accounts.PasskeyCeremony.Refused;
import club.yearline.testing.Database;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * What passkeys must keep, whatever the database: with a device that answers, and one that lies.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class PasskeysContract {

  private static final ClientAddress HERE = new ClientAddress("203.0.113.7");
  private static final String BROWSER = "the cookie of one browser";

  private ConfigurableApplicationContext one;
  private int people;
  private Account owner;
  private SoftDevice device;

  abstract Database freshDatabase();

  @BeforeAll
  void start() {
    Database database = freshDatabase();
    one =
        new SpringApplicationBuilder(Yearline.class)
            .properties("logging.level.root=warn")
            .run(
                "--server.port=0",
                "--yearline.demo=false",
                "--spring.datasource.url=" + database.url(),
                "--spring.datasource.username=" + database.user(),
                "--spring.datasource.password=" + database.password());
  }

  @AfterAll
  void stop() {
    one.close();
  }

  @BeforeEach
  void somebodyHasAPasskey() {
    owner = person(Role.MEMBER);
    device = device();
    keep(owner, device);
  }

  @Test
  void aPasskeyOpensTheAccountOfItsOwner() {
    assertThat(passkeys(owner)).extracting(Passkey::name).containsExactly("phone");
    assertThat(passkeys(owner).get(0).lastUsed()).isNull();
    assertThat(sign(device)).isEqualTo(owner.id());
    assertThat(sign(device)).isEqualTo(owner.id());
    assertThat(passkeys(owner).get(0).lastUsed()).isNotNull();
  }

  @Test
  void theQuestionAsksForAKeyThatIsFoundAndUnlockedByItself() {
    String make = ceremony().askToMake(owner, BROWSER);
    assertThat(make)
        .contains("\"residentKey\":\"required\"", "\"userVerification\":\"required\"")
        .contains("\"name\":\"" + owner.email() + "\"", "\"id\":\"localhost\"")
        .contains("\"excludeCredentials\":[{");
    assertThat(ceremony().askToSign(BROWSER))
        .contains("\"userVerification\":\"required\"", "\"allowCredentials\":[]");
  }

  @Test
  void anAnswerIsTakenOnce() {
    String answer = device.sign(ceremony().askToSign(BROWSER));
    assertThat(ceremony().signer(answer, BROWSER)).isEqualTo(owner.id());
    assertThatThrownBy(() -> ceremony().signer(answer, BROWSER)).isInstanceOf(Refused.class);
  }

  @Test
  void anAnswerIsTakenOnceHoweverOftenItIsSentAtOnce() throws Exception {
    SoftDevice uncounting = device();
    uncounting.count = 0;
    keep(owner, uncounting);
    uncounting.count = 0;
    String answer = uncounting.sign(ceremony().askToSign(BROWSER));
    ExecutorService crowd = Executors.newFixedThreadPool(6);
    List<Future<Boolean>> results = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      results.add(crowd.submit(() -> isTaken(answer)));
    }
    int taken = 0;
    for (Future<Boolean> result : results) {
      taken += result.get() ? 1 : 0;
    }
    crowd.shutdown();
    assertThat(taken).isOne();
  }

  @Test
  void anAnswerThatNobodyAskedForIsRefused() {
    String question = ceremony().askToSign(BROWSER);
    assertRefused(question.replaceFirst("(\"challenge\":\")....", "$1AAAA"), d -> {});
  }

  @Test
  void anAnswerFromAnotherBrowserIsRefused() {
    String answer = device.sign(ceremony().askToSign("another browser"));
    assertThatThrownBy(() -> ceremony().signer(answer, BROWSER)).isInstanceOf(Refused.class);
  }

  @Test
  void anAnswerThatCameTooLateIsRefused() {
    String answer = device.sign(ceremony().askToSign(BROWSER));
    jdbc()
        .sql("update passkey_challenge set expires_at = :past")
        .param("past", Accounts.now().minusSeconds(1))
        .update();
    assertThatThrownBy(() -> ceremony().signer(answer, BROWSER)).isInstanceOf(Refused.class);
    one.getBean(Housekeeping.class).tidy();
    assertThat(count("passkey_challenge")).isZero();
  }

  @Test
  void anAnswerFromThePageOfAnotherSiteIsRefused() {
    assertRefused(d -> d.origin = "https://catalogue.example.evil.example");
    assertRefused(d -> d.origin = "http://localhost:1");
    assertRefused(d -> d.origin = d.origin.replace("localhost", "evil.localhost"));
  }

  @Test
  void anAnswerForAnotherSiteIsRefused() {
    assertRefused(
        ceremony().askToSign(BROWSER).replace("\"localhost\"", "\"catalogue.example\""), d -> {});
  }

  @Test
  void aDeviceThatDidNotAskItsOwnerIsRefused() {
    assertRefused(d -> d.flags = SoftDevice.PRESENT);
    assertRefused(d -> d.flags = SoftDevice.VERIFIED);
  }

  @Test
  void anAnswerToTheOtherQuestionIsRefused() {
    assertRefused(d -> d.type = "webauthn.create");
    String making = ceremony().askToMake(owner, BROWSER);
    String signing = ceremony().askToSign(BROWSER);
    assertRefused(signing.replace(challenge(signing), challenge(making)), d -> {});
  }

  @Test
  void theSignatureOfAnotherKeyIsRefused() {
    SoftDevice thief = device();
    keep(person(Role.MEMBER), thief);
    String theirs = thief.sign(ceremony().askToSign(BROWSER));
    String mine = device.sign(ceremony().askToSign(BROWSER));
    String forged = mine.replaceFirst(signature(mine), signature(theirs));
    assertThatThrownBy(() -> ceremony().signer(forged, BROWSER)).isInstanceOf(Refused.class);
  }

  @Test
  void aPasskeyOpensNoAccountButThatOfItsOwner() {
    SoftDevice other = device();
    keep(person(Role.KEEPER), other);
    assertRefused(d -> d.handle = other.handle);
    assertRefused(d -> d.handle = "");
  }

  @Test
  void anUnknownPasskeyIsRefused() {
    SoftDevice stranger = device();
    stranger.handle = device.handle;
    assertThatThrownBy(() -> sign(stranger)).isInstanceOf(Refused.class);
  }

  @Test
  void aCountThatGoesBackIsRefusedAndTold() {
    sign(device);
    sign(device);
    device.count = 2;
    String answer = device.sign(ceremony().askToSign(BROWSER));
    assertThat(one.getBean(SignIn.class).withPasskey(answer, BROWSER, HERE))
        .isInstanceOf(SignIn.Outcome.Wrong.class);
    SecurityEvent last = one.getBean(SecurityLog.class).page(1, 1).get(0);
    assertThat(last.kind()).isEqualTo(SecurityEvent.Kind.PASSKEY_COUNT_WENT_BACK);
    assertThat(last.about()).isEqualTo(owner.id());
    device.count = 100;
    assertThat(sign(device)).isEqualTo(owner.id());
  }

  @Test
  void aDeviceThatNeverCountsIsTaken() {
    SoftDevice uncounting = device();
    uncounting.count = 0;
    keep(owner, uncounting);
    for (int i = 0; i < 2; i++) {
      uncounting.count = 0;
      assertThat(sign(uncounting)).isEqualTo(owner.id());
    }
  }

  @Test
  void aPasskeyIsMadeOnceAndForWhomItWasAsked() {
    SoftDevice fresh = device();
    String answer = fresh.make(ceremony().askToMake(owner, BROWSER));
    Account other = person(Role.MEMBER);
    assertThatThrownBy(() -> ceremony().keep(other, answer, "theirs", BROWSER))
        .isInstanceOf(Refused.class);
    ceremony().keep(owner, answer, "tablet", BROWSER);
    assertThatThrownBy(() -> ceremony().keep(owner, answer, "again", BROWSER))
        .isInstanceOf(Refused.class);
    String known = fresh.make(ceremony().askToMake(other, BROWSER));
    assertThatThrownBy(() -> ceremony().keep(other, known, "theirs now", BROWSER))
        .isInstanceOf(Refused.class);
    assertThat(passkeys(owner)).extracting(Passkey::name).containsExactly("phone", "tablet");
    assertThat(passkeys(other)).isEmpty();
  }

  @Test
  void aPasskeyOfAnotherSiteOrAnUnaskingDeviceIsNotKept() {
    for (Consumer<SoftDevice> lie :
        List.<Consumer<SoftDevice>>of(
            d -> d.origin = "https://evil.example",
            d -> d.flags = SoftDevice.PRESENT,
            d -> d.type = "webauthn.get")) {
      SoftDevice liar = device();
      lie.accept(liar);
      assertThatThrownBy(() -> keep(owner, liar)).isInstanceOf(Refused.class);
    }
    assertThat(passkeys(owner)).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "null",
        "[]",
        "{}",
        "not json",
        "{\"rawId\":\"AA\"}",
        "{\"rawId\":\"AA\",\"response\":{}}",
        "{\"rawId\":\"AA\",\"response\":{\"clientDataJSON\":\"AA\"}}",
        "{\"rawId\":\"!\",\"response\":{\"clientDataJSON\":\"e30\",\"authenticatorData\":\"AA\",\"signature\":\"AA\",\"attestationObject\":\"AA\"}}",
        "{\"rawId\":\"AA\",\"response\":{\"clientDataJSON\":\"e30\",\"authenticatorData\":\"AA\",\"signature\":\"AA\",\"attestationObject\":\"AA\"}}",
        "{\"rawId\":\"AA\",\"response\":{\"clientDataJSON\":\"AAAA\",\"authenticatorData\":\"AA\",\"signature\":\"AA\",\"attestationObject\":\"AA\"}}",
        "{\"rawId\":[{}],\"response\":7}"
      })
  void whatNoDeviceSaysIsRefused(String answer) {
    assertThatThrownBy(() -> ceremony().signer(answer, BROWSER)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> ceremony().keep(owner, answer, "x", BROWSER))
        .isInstanceOf(Refused.class);
  }

  @Test
  void aBrokenAttestationIsRefused() {
    String answer = device().make(ceremony().askToMake(owner, BROWSER));
    String broken = answer.replaceFirst("(\"attestationObject\":\")[^\"]*", "$1oWNmbXRk");
    assertThatThrownBy(() -> ceremony().keep(owner, broken, "x", BROWSER))
        .isInstanceOf(Refused.class);
  }

  @Test
  void oneRemovesOnlyOnesOwn() {
    Account other = person(Role.KEEPER);
    long id = passkeys(owner).get(0).id();
    assertThat(one.getBean(Passkeys.class).remove(other.id(), id)).isFalse();
    assertThat(one.getBean(Passkeys.class).remove(owner.id(), id)).isTrue();
    assertThatThrownBy(() -> sign(device)).isInstanceOf(Refused.class);
  }

  @Test
  void aClosedAccountLeavesNoPasskey() {
    person(Role.KEEPER);
    one.getBean(Membership.class).close(owner.actor(), owner, HERE);
    assertThat(passkeys(owner)).isEmpty();
    assertThatThrownBy(() -> sign(device)).isInstanceOf(Refused.class);
    for (String table : List.of("passkey", "passkey_owner")) {
      List<Map<String, Object>> rows =
          jdbc()
              .sql("select * from " + table + " where person_id = :id")
              .param("id", owner.id())
              .query()
              .listOfRows();
      assertThat(rows).as(table).isEmpty();
    }
  }

  @Test
  void aKeepersLinkForLostDevicesRemovesThePasskeys() {
    Links links = one.getBean(Links.class);
    for (boolean lost : new boolean[] {false, true}) {
      String path = links.make(OneTimeLink.Kind.RESET, owner.id(), null, null, lost);
      OneTimeLink link =
          links.usable(path.substring(path.lastIndexOf('/') + 1), OneTimeLink.Kind.RESET);
      one.getBean(Membership.class).reset(link, owner, owner.password(), HERE);
      assertThat(passkeys(owner)).hasSize(lost ? 0 : 1);
    }
  }

  private void assertRefused(Consumer<SoftDevice> lie) {
    assertRefused(ceremony().askToSign(BROWSER), lie);
  }

  private void assertRefused(String question, Consumer<SoftDevice> lie) {
    String origin = device.origin;
    String handle = device.handle;
    lie.accept(device);
    String answer = device.sign(question);
    assertThatThrownBy(() -> ceremony().signer(answer, BROWSER)).isInstanceOf(Refused.class);
    device.origin = origin;
    device.handle = handle;
    device.flags = SoftDevice.PRESENT | SoftDevice.VERIFIED;
    device.type = "";
    assertThat(sign(device)).as("told the truth").isEqualTo(owner.id());
  }

  private boolean isTaken(String answer) {
    try {
      return ceremony().signer(answer, BROWSER) == owner.id();
    } catch (Refused e) {
      return false;
    }
  }

  private void keep(Account account, SoftDevice device) {
    String answer = device.make(ceremony().askToMake(account, BROWSER));
    ceremony().keep(account, answer, "phone", BROWSER);
  }

  private long sign(SoftDevice device) {
    return ceremony().signer(device.sign(ceremony().askToSign(BROWSER)), BROWSER);
  }

  private static String signature(String answer) {
    return answer.replaceFirst(".*\"signature\":\"([^\"]*)\".*", "$1");
  }

  private static String challenge(String question) {
    return question.replaceFirst(".*\"challenge\":\"([^\"]*)\".*", "$1");
  }

  private SoftDevice device() {
    return new SoftDevice(
        "http://localhost:" + one.getEnvironment().getProperty("local.server.port"));
  }

  private Account person(Role role) {
    String email = "owner" + ++people + "@club.example";
    Accounts accounts = one.getBean(Accounts.class);
    long id = accounts.add("Owner " + people, EmailAddress.of(email).orElseThrow(), "hash", role);
    return accounts.find(id).orElseThrow();
  }

  private List<Passkey> passkeys(Account account) {
    return one.getBean(Passkeys.class).of(account.id());
  }

  private PasskeyCeremony ceremony() {
    return one.getBean(PasskeyCeremony.class);
  }

  private JdbcClient jdbc() {
    return one.getBean(JdbcClient.class);
  }

  private long count(String table) {
    return jdbc().sql("select count(*) from " + table).query(Long.class).single();
  }
}
