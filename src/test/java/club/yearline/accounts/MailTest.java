package club.yearline.accounts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import club.yearline.testing.SignedIn;
import com.icegreen.greenmail.junit5.GreenMailExtension;
import com.icegreen.greenmail.util.GreenMailUtil;
import com.icegreen.greenmail.util.ServerSetupTest;
import jakarta.mail.internet.MimeMessage;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.context.TestPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

/** Mail about accounts, against a real SMTP server within the test. */
@WholeApplication
@TestPropertySource(
    properties = {
      "spring.mail.host=localhost",
      "spring.mail.port=3025",
      "yearline.mail-from=catalogue@club.example",
      "yearline.address=https://catalogue.club.example/"
    })
class MailTest {

  private static final Pattern LINK =
      Pattern.compile("https://catalogue\\.club\\.example(/[\\w/-]+)");

  @RegisterExtension
  static GreenMailExtension mail =
      new GreenMailExtension(ServerSetupTest.SMTP).withPerMethodLifecycle(true);

  @Autowired private MockMvc mvc;
  @Autowired private ApplicationContext context;
  @Autowired private Post post;

  private ResultActions askReset(String email, String from) throws Exception {
    return mvc.perform(
        post("/reset")
            .param("email", email)
            .header("Host", "elsewhere.example")
            .with(csrf())
            .with(
                request -> {
                  request.setRemoteAddr(from);
                  return request;
                }));
  }

  private String only() {
    assertThat(mail.waitForIncomingEmail(20_000, 1)).isTrue();
    return GreenMailUtil.getBody(mail.getReceivedMessages()[0]).replace("\r\n", "\n");
  }

  private static String link(String text) {
    Matcher link = LINK.matcher(text);
    assertThat(link.find()).as(text).isTrue();
    return link.group(1);
  }

  @Test
  void aForgottenPasswordIsSetAnewByMailAndOnlyOnce() throws Exception {
    SignedIn.person(context, "Rita Reset", Role.MEMBER);
    askReset("Rita.Reset@Club.example", "203.0.113.1")
        .andExpect(redirectedUrl("/reset?asked=true"));
    String text = only();
    assertThat(text).doesNotContain("elsewhere.example");
    String path = link(text);
    mvc.perform(get(path)).andExpect(status().isOk());
    mvc.perform(post(path).param("password", "too short").with(csrf()))
        .andExpect(status().isUnprocessableContent());
    mvc.perform(post(path).param("password", "three geese over the river").with(csrf()))
        .andExpect(redirectedUrl("/sign-in?new=password"));
    assertThat(mail.waitForIncomingEmail(20_000, 2)).isTrue();
    assertThat(GreenMailUtil.getBody(mail.getReceivedMessages()[1])).contains("has been changed");
    mvc.perform(post(path).param("password", "three geese over the lake").with(csrf()))
        .andExpect(status().isGone());
    mvc.perform(
            post("/sign-in")
                .param("email", "rita.reset@club.example")
                .param("password", "three geese over the river")
                .with(csrf()))
        .andExpect(redirectedUrl("/account"));
  }

  @Test
  void theOwnerIsToldOfANewPasskeyAndOfOneThatIsGone() throws Exception {
    Actor owner = SignedIn.person(context, "Petra Told", Role.MEMBER);
    SoftDevice device = new SoftDevice("https://catalogue.club.example");
    String page =
        asOwner(owner, "prepare", "current", SignedIn.PASSWORD)
            .andReturn()
            .getResponse()
            .getContentAsString();
    String question = Jsoup.parse(page).select("form[data-question]").attr("data-question");
    assertThat(question).contains("\"catalogue.club.example\"");
    asOwner(owner, "", "credential", device.make(question))
        .andExpect(redirectedUrl("/account/passkeys"));
    assertThat(only()).contains("A passkey has been added");
    long id = context.getBean(Passkeys.class).of(owner.id()).get(0).id();
    asOwner(owner, id + "/remove", "current", SignedIn.PASSWORD);
    assertThat(mail.waitForIncomingEmail(20_000, 2)).isTrue();
    assertThat(GreenMailUtil.getBody(mail.getReceivedMessages()[1])).contains("has been removed");
  }

  private ResultActions asOwner(Actor owner, String step, String field, String value)
      throws Exception {
    return mvc.perform(
        post("/account/passkeys" + (step.isEmpty() ? "" : "/" + step))
            .param("name", "phone")
            .param(field, value)
            .with(SignedIn.as(owner))
            .with(csrf()));
  }

  @Test
  void anUnknownAddressGetsTheSameAnswerAndNoMail() throws Exception {
    SignedIn.person(context, "Karl Known", Role.MEMBER);
    askReset("nobody@club.example", "203.0.113.2").andExpect(redirectedUrl("/reset?asked=true"));
    askReset("karl.known@club.example", "203.0.113.2")
        .andExpect(redirectedUrl("/reset?asked=true"));
    assertThat(mail.waitForIncomingEmail(20_000, 1)).isTrue();
    MimeMessage[] all = mail.getReceivedMessages();
    assertThat(all).hasSize(1);
    assertThat(all[0].getAllRecipients())
        .extracting(Object::toString)
        .containsExactly("karl.known@club.example");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "ann@club.example\r\nBcc: all@club.example",
        "ann@club.example\nBcc: all@club.example",
        "ann@club.example,all@club.example",
        "Ann <ann@club.example>",
        "ann@club.example%0aBcc:all@club.example",
        "ann..other@club.example",
        "@club.example",
        "ann"
      })
  void noSecondHeaderOrAddressGetsIntoAMail(String email) throws Exception {
    assertThat(EmailAddress.of(email)).isEmpty();
    mvc.perform(
            post("/admin/joining/invite")
                .param("email", email)
                .with(SignedIn.as(Role.MODERATOR))
                .with(csrf()))
        .andExpect(status().isUnprocessableContent());
    assertThat(mail.getReceivedMessages()).isEmpty();
  }

  @Test
  void aSubjectIsOneLineWhateverTheClubIsCalled() throws Exception {
    Club club = context.getBean(Club.class);
    ClubSettings now = club.settings();
    // The form refuses such a name; the mail does not rely on that.
    club.change(
        new ClubSettings("Club\r\nBcc: all@club.example", false, false, false, 365, now.version()));
    post.send(EmailAddress.of("ann@club.example").orElseThrow(), "mail.reset", "x");
    assertThat(mail.waitForIncomingEmail(20_000, 1)).isTrue();
    MimeMessage message = mail.getReceivedMessages()[0];
    assertThat(message.getHeader("Bcc")).isNull();
    assertThat(message.getAllRecipients())
        .extracting(Object::toString)
        .containsExactly("ann@club.example");
    assertThat(message.getSubject()).contains("Club Bcc");
    club.change(new ClubSettings("", false, false, false, 365, club.settings().version()));
  }

  @Test
  void aNewAddressCountsOnceItsOwnerHasConfirmedIt() throws Exception {
    Actor actor = SignedIn.person(context, "Mona Moves", Role.MEMBER);
    People people = context.getBean(People.class);
    mvc.perform(
            post("/account/email")
                .param("email", "mona@new.example")
                .param("current", SignedIn.PASSWORD)
                .with(SignedIn.as(actor))
                .with(csrf()))
        .andExpect(redirectedUrl("/account"));
    assertThat(mail.waitForIncomingEmail(20_000, 2)).isTrue();
    assertThat(people.mailOf(actor.id())).contains("mona.moves@club.example");
    String path = link(GreenMailUtil.getBody(mail.getReceivedMessages()[0]));
    Actor other = SignedIn.person(context, "Somebody Else", Role.MEMBER);
    mvc.perform(post(path).with(SignedIn.as(other)).with(csrf())).andExpect(status().isGone());
    mvc.perform(post(path).with(SignedIn.as(actor)).with(csrf()))
        .andExpect(redirectedUrl("/account"));
    assertThat(people.mailOf(actor.id())).contains("mona@new.example");
  }

  @Test
  void whoAsksTooOftenIsToldSo() throws Exception {
    for (int i = 0; i < 5; i++) {
      askReset("nobody" + i + "@club.example", "203.0.113.3").andExpect(status().isFound());
    }
    askReset("nobody@club.example", "203.0.113.3").andExpect(status().isTooManyRequests());
  }
}
