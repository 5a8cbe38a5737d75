package club.yearline.accounts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import club.yearline.accounts.OneTimeLink.Kind;
import club.yearline.testing.SignedIn;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.context.TestPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** Joining, roles and closing, as rendered pages. */
@WholeApplication
@TestPropertySource(properties = "start.of=people") // its keeper is the only one
class PeoplePagesTest {

  private static final String SCRIPT = "<script>alert('x')</script>";

  @Autowired private MockMvc mvc;
  @Autowired private ApplicationContext context;
  @Autowired private Links links;
  @Autowired private Accounts accounts;
  @Autowired private Club club;

  private String linkOf(ResultActions answer) throws Exception {
    Document page = Jsoup.parse(answer.andReturn().getResponse().getContentAsString());
    String link = page.select("#link").text();
    assertThat(link).startsWith("http://localhost/");
    return link.substring("http://localhost".length());
  }

  private ResultActions enter(String path, String name, String email, String password)
      throws Exception {
    return mvc.perform(
        post(path)
            .param("name", name)
            .param("email", email)
            .param("password", password)
            .with(csrf()));
  }

  private String invitation() throws Exception {
    return linkOf(
        mvc.perform(post("/admin/joining/invite").with(SignedIn.as(Role.MODERATOR)).with(csrf())));
  }

  private Account named(String email) {
    return accounts.withEmail(EmailAddress.of(email).orElseThrow()).orElseThrow();
  }

  private static RequestPostProcessor from(String address) {
    return request -> {
      request.setRemoteAddr(address);
      return request;
    };
  }

  @Test
  void anInvitationMakesOneMemberOnce() throws Exception {
    String path = invitation();
    mvc.perform(get(path)).andExpect(status().isOk());
    enter(path, "Nora New", "nora@club.example", "four larks above the field")
        .andExpect(redirectedUrl("/sign-in?new=member"));
    assertThat(named("nora@club.example").role()).isEqualTo(Role.MEMBER);
    enter(path, "Again", "again@club.example", "four larks above the field")
        .andExpect(status().isGone());
    assertThat(accounts.withEmail(EmailAddress.of("again@club.example").orElseThrow())).isEmpty();
  }

  @Test
  void aForgedRoleIsIgnored() throws Exception {
    mvc.perform(
            post(invitation())
                .param("name", "Fred Forger")
                .param("email", "fred@club.example")
                .param("password", "four larks above the field")
                .param("role", "KEEPER")
                .with(csrf()))
        .andExpect(redirectedUrl("/sign-in?new=member"));
    assertThat(named("fred@club.example").role()).isEqualTo(Role.MEMBER);
    Actor fred = named("fred@club.example").actor();
    mvc.perform(
            post("/admin/people/" + fred.id() + "/role")
                .param("role", "keeper")
                .with(SignedIn.as(fred))
                .with(csrf()))
        .andExpect(status().isForbidden());
    assertThat(named("fred@club.example").role()).isEqualTo(Role.MEMBER);
  }

  @Test
  void anAddressThatHasAnAccountIsAnsweredAsAnyOther() throws Exception {
    Actor known = SignedIn.person(context, "Kim Known", Role.MODERATOR);
    enter(invitation(), "Thief", "KIM.known@club.example", "four larks above the field")
        .andExpect(redirectedUrl("/sign-in?new=member"));
    assertThat(named("kim.known@club.example").actor()).isEqualTo(known);
    mvc.perform(
            post("/sign-in")
                .param("email", "kim.known@club.example")
                .param("password", "four larks above the field")
                .with(csrf()))
        .andExpect(status().isUnprocessableContent());
  }

  @Test
  void aRevokedInvitationIsWorthNothing() throws Exception {
    String path = invitation();
    OneTimeLink link = links.usable(path.substring("/join/".length()), Kind.INVITATION);
    mvc.perform(
            post("/admin/joining/invitations/" + link.id() + "/revoke")
                .with(SignedIn.as(Role.KEEPER))
                .with(csrf()))
        .andExpect(redirectedUrl("/admin/joining"));
    mvc.perform(get(path)).andExpect(status().isGone());
    mvc.perform(get("/join/" + "A".repeat(43))).andExpect(status().isGone());
    mvc.perform(get(path.replace("/join/", "/set-up/"))).andExpect(status().isGone());
  }

  @Test
  void everyFaultOfAFormIsNamedAndWhatWasTypedStays() throws Exception {
    enter(invitation(), "x".repeat(121), "no address", "short")
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("longer than 120 characters")))
        .andExpect(content().string(containsString("not an e-mail address")))
        .andExpect(content().string(containsString("fewer than 15 characters")))
        .andExpect(content().string(containsString("value=\"no address\"")))
        .andExpect(content().string(not(containsString("value=\"short\""))));
    enter(invitation(), "", "a".repeat(300) + "@club.example", "x".repeat(10_000))
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("Give a name")))
        .andExpect(content().string(containsString("more than 256 characters")));
    enter(invitation(), "Line\nEnd", "line@club.example", "four larks above the field")
        .andExpect(status().isUnprocessableContent());
  }

  @Test
  void aScriptInANameIsATextEverywhere() throws Exception {
    Actor scripted = SignedIn.person(context, "Sam", Role.MODERATOR);
    mvc.perform(
            post("/account/name").param("name", SCRIPT).with(SignedIn.as(scripted)).with(csrf()))
        .andExpect(redirectedUrl("/account"));
    Actor now = named("sam@club.example").actor();
    mvc.perform(post("/admin/joining/invite").with(SignedIn.as(now)).with(csrf()));
    for (String path : new String[] {"/account", "/admin/joining", "/account/sessions"}) {
      assertNoScript(path, SignedIn.as(now));
    }
    assertNoScript("/admin/people", SignedIn.as(Role.KEEPER));
    assertNoScript("/admin/people/" + now.id(), SignedIn.as(Role.KEEPER));
    assertNoScript("/admin/log", SignedIn.as(Role.KEEPER));
  }

  private void assertNoScript(String path, RequestPostProcessor who) throws Exception {
    String page =
        mvc.perform(get(path).with(who))
            .andExpect(status().isOk())
            .andReturn()
            .getResponse()
            .getContentAsString();
    assertThat(page).as(path).doesNotContain(SCRIPT).doesNotContain("alert('x')");
  }

  @Test
  void whoAsksToJoinIsInvitedByAModerator() throws Exception {
    takeRequests(true);
    mvc.perform(
            post("/join")
                .param("name", "Jo " + SCRIPT)
                .param("email", "jo@club.example")
                .param("note", SCRIPT)
                .with(from("198.51.100.1"))
                .with(csrf()))
        .andExpect(redirectedUrl("/join?asked=true"));
    assertNoScript("/admin/joining", SignedIn.as(Role.MODERATOR));
    long id = context.getBean(JoinRequests.class).open().get(0).id();
    String accept = "/admin/joining/requests/" + id + "/accept";
    String path = linkOf(mvc.perform(post(accept).with(SignedIn.as(Role.MODERATOR)).with(csrf())));
    mvc.perform(post(accept).with(SignedIn.as(Role.MODERATOR)).with(csrf()))
        .andExpect(status().isNotFound());
    enter(path, "Jo", "jo@club.example", "four larks above the field")
        .andExpect(redirectedUrl("/sign-in?new=member"));
    takeRequests(false);
    mvc.perform(post("/join").param("name", "Jo").param("email", "jo2@club.example").with(csrf()))
        .andExpect(status().isForbidden());
  }

  private void takeRequests(boolean on) {
    ClubSettings now = club.settings();
    club.change(new ClubSettings(now.name(), false, false, on, now.logDays(), now.version()));
  }

  @Test
  void theLastKeeperStays() throws Exception {
    Actor keeper = SignedIn.person(context, Role.KEEPER);
    mvc.perform(
            post("/admin/people/" + keeper.id() + "/role")
                .param("role", "member")
                .with(SignedIn.as(keeper))
                .with(csrf()))
        .andExpect(status().isConflict());
    mvc.perform(
            post("/admin/people/" + keeper.id() + "/close")
                .param("sure", "true")
                .with(SignedIn.as(keeper))
                .with(csrf()))
        .andExpect(status().isConflict());
    assertThat(accounts.find(keeper.id()).orElseThrow().role()).isEqualTo(Role.KEEPER);
  }

  @Test
  void anAccountIsClosedByItsOwnerWithThePassword() throws Exception {
    SignedIn.person(context, Role.KEEPER);
    Actor leaver = SignedIn.person(context, "Lea Leaver", Role.MEMBER);
    mvc.perform(
            post("/account/close")
                .param("current", "not the password at all")
                .with(SignedIn.as(leaver))
                .with(csrf()))
        .andExpect(status().isUnprocessableContent());
    mvc.perform(
            post("/account/close")
                .param("current", SignedIn.PASSWORD)
                .with(SignedIn.as(leaver))
                .with(csrf()))
        .andExpect(redirectedUrl("/"));
    assertThat(accounts.find(leaver.id())).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"-1", "0", "3651", "many", "", "99999999999"})
  void settingsOutOfRangeAreRefused(String days) throws Exception {
    mvc.perform(
            post("/admin/settings")
                .param("logDays", days)
                .param("name", "<b>Club</b>")
                .param("version", "0")
                .with(SignedIn.as(Role.KEEPER))
                .with(csrf()))
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("from 1 to 3650")))
        .andExpect(content().string(not(containsString("<b>Club</b>"))));
    assertThat(club.settings().logDays()).isEqualTo(365);
  }

  @Test
  void settingsThatSomebodyElseChangedMeanwhileAreNotOverwritten() throws Exception {
    mvc.perform(
            post("/admin/settings")
                .param("logDays", "30")
                .param("closed", "on")
                .param("version", "100000")
                .with(SignedIn.as(Role.KEEPER))
                .with(csrf()))
        .andExpect(redirectedUrl("/admin/settings"));
    assertThat(club.isClosed()).isFalse();
  }
}
