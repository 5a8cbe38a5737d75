package club.yearline.accounts;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.ContextConfiguration;

/** The pages of passkeys, sent as a browser would, with a device in software. */
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT, properties = "yearline.demo=false")
@ContextConfiguration(initializers = WholeApplication.Fresh.class)
class PasskeyPagesTest {

  private static final String PASSWORD = "hangar doors face the wind";

  private static int people;

  @LocalServerPort private int port;
  @Autowired private Accounts accounts;
  @Autowired private Hashing hashing;
  @Autowired private SecondFactors factors;
  @Autowired private Passkeys passkeys;
  @Autowired private SecurityLog log;

  private Account owner;
  private Visitor visitor;
  private SoftDevice device;

  @BeforeEach
  void somebodyIsSignedIn() {
    EmailAddress email = EmailAddress.of("pages" + ++people + "@club.example").orElseThrow();
    long id = accounts.add("Pat " + people, email, hashing.hash(PASSWORD), Role.MEMBER);
    owner = accounts.find(id).orElseThrow();
    visitor = visitor().signIn(owner.email(), PASSWORD);
    device = new SoftDevice(base());
  }

  @Test
  void aPasskeyIsAddedUsedAndRemoved() {
    prepare("phone", PASSWORD, "");
    send("/account/passkeys", device.make(question()));
    assertThat(visitor.text()).contains("The passkey is added", "phone", "never used");
    assertLogged(SecurityEvent.Kind.PASSKEY_ADDED);

    Visitor elsewhere = visitor().open("/sign-in?to=/account/passkeys");
    signIn(elsewhere);
    assertThat(elsewhere.path()).isEqualTo("/account/passkeys");
    assertThat(elsewhere.text())
        .contains("last used", owner.name())
        .doesNotContain("No passkey yet");
    assertThat(elsewhere.page().select("#code")).isEmpty();
    assertLogged(SecurityEvent.Kind.SIGNED_IN_BY_PASSKEY);

    long id = passkeys.of(owner.id()).get(0).id();
    elsewhere.submit("/" + id + "/remove", "current", "not the password");
    assertThat(elsewhere.status()).isEqualTo(422);
    assertThat(passkeys.of(owner.id())).hasSize(1);
    elsewhere.submit("/" + id + "/remove", "current", PASSWORD);
    assertThat(elsewhere.text()).contains("opens this account no more", "No passkey yet");
    assertLogged(SecurityEvent.Kind.PASSKEY_REMOVED);
    Visitor late = visitor().open("/sign-in");
    signIn(late);
    assertThat(late.status()).isEqualTo(422);
    assertThat(late.text()).contains("does not open an account here");
  }

  @Test
  void addingOneTakesThePasswordAndTheCodeWhereOneIsAskedFor() {
    prepare("phone", "not the password", "");
    assertThat(visitor.status()).isEqualTo(422);
    assertThat(visitor.page().select("form[data-question]")).isEmpty();
    assertThat(visitor.page().select("#name").val()).isEqualTo("phone");

    String secret = OneTimeCodes.newSecret();
    factors.prepare(owner.id(), secret);
    factors.switchOn(owner.id());
    prepare("phone", PASSWORD, "000000");
    assertThat(visitor.status()).isEqualTo(422);
    assertThat(visitor.page().select("form[data-question]")).isEmpty();
    prepare("phone", PASSWORD, OneTimeCodes.code(secret, Instant.now()));
    send("/account/passkeys", device.make(question()));
    assertThat(passkeys.of(owner.id())).hasSize(1);

    Visitor elsewhere = visitor().open("/sign-in");
    signIn(elsewhere);
    assertThat(elsewhere.path()).as("no code is asked for").isEqualTo("/account");
  }

  @Test
  void anAnswerWithoutTheProofOfAMomentAgoIsNotKept() {
    visitor.open("/account/passkeys");
    String forged =
        "{\"challenge\":\"AAAA\",\"rp\":{\"id\":\"localhost\"},\"user\":{\"id\":\"AA\"}}";
    send("/account/passkeys", device.make(forged));
    assertThat(visitor.status()).isEqualTo(422);
    assertThat(visitor.text()).contains("does not hold, or came too late");
    assertThat(passkeys.of(owner.id())).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "'', Give the passkey a name",
    "0123456789012345678901234567890123456789012345678901234567890, longer than 60",
    "'a\nb', cannot be shown"
  })
  void aNameIsAskedForAndBounded(String name, String said) {
    prepare(name, PASSWORD, "");
    assertThat(visitor.status()).isEqualTo(422);
    assertThat(visitor.text()).contains(said);
  }

  @Test
  void aScriptInANameIsAText() {
    prepare("<script>alert(1)</script>", PASSWORD, "");
    assertThat(visitor.page().select("main script")).isEmpty();
    send("/account/passkeys", device.make(question()));
    assertThat(visitor.page().select("main script")).isEmpty();
    assertThat(visitor.text()).contains("<script>alert(1)</script>");
  }

  @Test
  void whatWasTypedOutlivesALostSessionAndComesBackAfterSigningInByPasskey() {
    prepare("phone", PASSWORD, "");
    send("/account/passkeys", device.make(question()));
    visitor.open("/account");
    visitor.lose("yearline");
    visitor.submit("/account/name", "name", "Ann Typed", "current", "a password by mistake");
    assertThat(visitor.page().html()).doesNotContain("a password by mistake", "mistake");
    assertThat(visitor.page().select("form[data-passkey] input[name=kept]").val())
        .contains("Ann+Typed");
    signIn(visitor);
    assertThat(visitor.path()).isEqualTo("/sign-in/resume");
    assertThat(visitor.text()).contains("Ann Typed");
  }

  @Test
  void nobodyIsSentElsewhereAfterSigningIn() {
    prepare("phone", PASSWORD, "");
    send("/account/passkeys", device.make(question()));
    Visitor elsewhere = visitor().open("/sign-in");
    elsewhere
        .page()
        .select("form[data-passkey]")
        .append("<input type=hidden name=to value=//x.example>");
    signIn(elsewhere);
    assertThat(elsewhere.path()).isEqualTo("/account");
  }

  @Test
  void signingOutEverywhereEndsASessionBegunByPasskey() {
    prepare("phone", PASSWORD, "");
    send("/account/passkeys", device.make(question()));
    Visitor elsewhere = visitor().open("/sign-in");
    signIn(elsewhere);
    visitor.open("/account/sessions").submit("/end-all");
    assertThat(elsewhere.open("/account").path()).isEqualTo("/sign-in");
  }

  @Test
  void thePasskeyOfAClosedAccountOpensNothing() {
    prepare("phone", PASSWORD, "");
    send("/account/passkeys", device.make(question()));
    accounts.close(owner.id());
    Visitor elsewhere = visitor().open("/sign-in");
    signIn(elsewhere);
    assertThat(elsewhere.status()).isEqualTo(422);
    assertThat(elsewhere.open("/account").path()).isEqualTo("/sign-in");
  }

  @Test
  void aQuestionTakesTheTokenOfTheForm() {
    Visitor elsewhere = visitor().open("/sign-in");
    assertThat(elsewhere.post("/sign-in/passkey/question").status()).isEqualTo(401);
    assertThat(elsewhere.text()).doesNotContain("challenge");
  }

  private void prepare(String name, String password, String code) {
    visitor
        .open("/account/passkeys")
        .submit("/passkeys/prepare", "name", name, "current", password, "code", code);
  }

  private String question() {
    String question = visitor.page().select("form[data-question]").attr("data-question");
    assertThat(question).as(visitor.text()).isNotEmpty();
    return question;
  }

  /** What the script of the page does: fills the answer in and sends the form. */
  private void send(String action, String answer) {
    String token = visitor.page().select("input[name=_csrf]").val();
    String name = visitor.page().select("form[data-question] input[name=name]").val();
    visitor.post(action, "_csrf", token, "name", name.isEmpty() ? "x" : name, "credential", answer);
  }

  private void signIn(Visitor visitor) {
    String token = visitor.page().select("form[data-passkey] input[name=_csrf]").val();
    String to = visitor.page().select("form[data-passkey] input[name=to]").val();
    String kept = visitor.page().select("form[data-passkey] input[name=kept]").val();
    String question = visitor.post("/sign-in/passkey/question", "_csrf", token).text();
    String answer = device.sign(question);
    visitor.post("/sign-in/passkey", "_csrf", token, "to", to, "kept", kept, "credential", answer);
  }

  private void assertLogged(SecurityEvent.Kind kind) {
    assertThat(log.page(1, 5)).anyMatch(e -> e.kind() == kind && owner.id() == person(e));
  }

  private static long person(SecurityEvent event) {
    return event.person() == null ? 0 : event.person();
  }

  private Visitor visitor() {
    return new Visitor(base());
  }

  private String base() {
    return "http://localhost:" + port;
  }
}
