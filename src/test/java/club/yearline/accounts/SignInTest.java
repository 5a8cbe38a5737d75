package club.yearline.accounts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.startsWith;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import club.yearline.testing.SignedIn;
import jakarta.servlet.http.Cookie;
import java.time.Duration;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/** Signing in and out, on the whole application. */
@WholeApplication
class SignInTest {

  @Autowired private MockMvc mvc;
  @Autowired private ApplicationContext context;

  @BeforeEach
  void somebody() {
    SignedIn.person(context, "Ann Other", Role.MEMBER);
  }

  private ResultActions signIn(String email, String password, String to) throws Exception {
    return mvc.perform(
        post("/sign-in")
            .param("email", email)
            .param("password", password)
            .param("to", to)
            .with(csrf()));
  }

  @Test
  void theRightPasswordOpensASession() throws Exception {
    Cookie cookie =
        signIn("Ann.Other@club.example", SignedIn.PASSWORD, "")
            .andExpect(redirectedUrl("/account"))
            .andReturn()
            .getResponse()
            .getCookie("yearline");
    assertThat(cookie).isNotNull();
    assertThat(cookie.isHttpOnly()).isTrue();
    assertThat(cookie.getAttribute("SameSite")).isEqualTo("Lax");
    mvc.perform(get("/account").cookie(cookie))
        .andExpect(status().isOk())
        .andExpect(header().string("Cache-Control", containsString("no-store")))
        .andExpect(content().string(containsString("Ann Other")));
    mvc.perform(post("/sign-out").cookie(cookie).with(csrf())).andExpect(redirectedUrl("/"));
    mvc.perform(get("/account").cookie(cookie)).andExpect(redirectedUrl("/sign-in?to=%2Faccount"));
  }

  @Test
  void theCookieIsSentOverSecuredConnectionsOnlyWhereTheSiteIsSecured() throws Exception {
    Cookie cookie =
        mvc.perform(
                post("/sign-in")
                    .secure(true)
                    .param("email", "ann.other@club.example")
                    .param("password", SignedIn.PASSWORD)
                    .with(csrf()))
            .andReturn()
            .getResponse()
            .getCookie("yearline");
    assertThat(cookie).isNotNull();
    assertThat(cookie.getSecure()).isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"ann.other@club.example", "nobody@club.example", "no address", ""})
  void aWrongPasswordAndAnUnknownAddressAreAnsweredAlike(String email) throws Exception {
    signIn(email, "not the right one at all", "")
        .andExpect(status().isUnprocessableContent())
        .andExpect(header().doesNotExist("Set-Cookie"))
        .andExpect(content().string(containsString("do not belong together")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "https://elsewhere.example/",
        "//elsewhere.example/",
        "/\\elsewhere.example/",
        "/\t/elsewhere.example/",
        "javascript:alert(1)",
        "account",
        "/sign-out"
      })
  void nobodyIsSentElsewhereAfterSigningIn(String to) throws Exception {
    signIn("ann.other@club.example", SignedIn.PASSWORD, to).andExpect(redirectedUrl("/account"));
  }

  @Test
  void whoWasSentToSignInGetsBack() throws Exception {
    mvc.perform(get("/account?tab=a&b=c"))
        .andExpect(redirectedUrl("/sign-in?to=%2Faccount%3Ftab%3Da%26b%3Dc"));
    signIn("ann.other@club.example", SignedIn.PASSWORD, "/account?tab=a&b=c")
        .andExpect(redirectedUrl("/account?tab=a&b=c"));
  }

  private ResultActions guess(String email, String from, Cookie... cookies) throws Exception {
    MockHttpServletRequestBuilder request =
        post("/sign-in").param("email", email).param("password", "a guess").with(csrf());
    request.with(
        r -> {
          r.setRemoteAddr(from);
          return r;
        });
    return mvc.perform(cookies.length == 0 ? request : request.cookie(cookies));
  }

  @ParameterizedTest
  @ValueSource(strings = {"gus.guessed@club.example", "unknown@club.example"})
  void guessingIsSlowedForKnownAndUnknownAddressesAlike(String email) throws Exception {
    SignedIn.person(context, "Gus Guessed", Role.MEMBER);
    for (int i = 0; i < 5; i++) {
      guess(email, "198.51.100." + i).andExpect(status().isUnprocessableContent());
    }
    guess(email, "198.51.100.9")
        .andExpect(status().isTooManyRequests())
        .andExpect(header().exists("Retry-After"))
        .andExpect(content().string(containsString("Too many attempts")));
  }

  /** The right password does not help a stranger past the wait, or guesses would be told apart. */
  @Test
  void whileSlowedNoPasswordIsJudgedButTheOwnersBrowserGetsIn() throws Exception {
    SignedIn.person(context, "Olga Owner", Role.MEMBER);
    String email = "olga.owner@club.example";
    Cookie device =
        signIn(email, SignedIn.PASSWORD, "").andReturn().getResponse().getCookie("yearline-device");
    assertThat(device).isNotNull();
    assertThat(device.isHttpOnly()).isTrue();
    for (int i = 0; i < 5; i++) {
      guess(email, "198.51.100." + i);
    }
    signIn(email, SignedIn.PASSWORD, "").andExpect(status().isTooManyRequests());
    mvc.perform(
            post("/sign-in")
                .param("email", email)
                .param("password", SignedIn.PASSWORD)
                .cookie(device)
                .with(csrf()))
        .andExpect(redirectedUrl("/account"));
    guess(email, "198.51.100.7", new Cookie("yearline-device", "made up"))
        .andExpect(status().isTooManyRequests());
  }

  @Test
  void oneNetworkCannotTryManyAccounts() throws Exception {
    Throttle throttle = context.getBean(Throttle.class);
    int tries = 0;
    while (throttle.allows("sign-in", "2001:db8:0:1:", 60, Duration.ofMinutes(10))) {
      tries++;
    }
    assertThat(tries).isGreaterThanOrEqualTo(60);
    guess("someone@club.example", "2001:db8:0:1::ffff").andExpect(status().isTooManyRequests());
    guess("someone@club.example", "2001:db8:0:2::1").andExpect(status().isUnprocessableContent());
  }

  @Test
  void aChangedPasswordEndsEverySession() throws Exception {
    SignedIn.person(context, "Cora Changes", Role.MEMBER);
    String email = "cora.changes@club.example";
    Cookie old = session(signIn(email, SignedIn.PASSWORD, ""));
    Cookie current = session(signIn(email, SignedIn.PASSWORD, ""));
    mvc.perform(
            post("/account/password")
                .param("current", "not my password at all")
                .param("password", "five owls beside the pump")
                .cookie(current)
                .with(csrf()))
        .andExpect(status().isUnprocessableContent());
    Cookie renewed =
        session(
            mvc.perform(
                    post("/account/password")
                        .param("current", SignedIn.PASSWORD)
                        .param("password", "five owls beside the pump")
                        .cookie(current)
                        .with(csrf()))
                .andExpect(redirectedUrl("/account")));
    mvc.perform(get("/account").cookie(old)).andExpect(status().isFound());
    mvc.perform(get("/account").cookie(current)).andExpect(status().isFound());
    mvc.perform(get("/account").cookie(renewed)).andExpect(status().isOk());
    signIn(email, SignedIn.PASSWORD, "").andExpect(status().isUnprocessableContent());
    signIn(email, "five owls beside the pump", "").andExpect(redirectedUrl("/account"));
  }

  @Test
  void sessionsAreListedAndEndedOneByOneOrAllAtOnce() throws Exception {
    SignedIn.person(context, "Sven Sessions", Role.MEMBER);
    String email = "sven.sessions@club.example";
    Cookie first = session(signIn(email, SignedIn.PASSWORD, ""));
    Cookie second = session(signIn(email, SignedIn.PASSWORD, ""));
    Document page =
        Jsoup.parse(
            mvc.perform(get("/account/sessions").cookie(second))
                .andReturn()
                .getResponse()
                .getContentAsString());
    assertThat(page.select("main .rows > li")).hasSize(2);
    assertThat(page.html()).doesNotContain(second.getValue()).doesNotContain(first.getValue());
    String end = page.select("main .rows form").attr("action");
    Actor other = SignedIn.person(context, "Ann Other", Role.MEMBER);
    mvc.perform(post(end).with(SignedIn.as(other)).with(csrf()));
    mvc.perform(get("/account").cookie(first)).andExpect(status().isOk());
    mvc.perform(post(end).cookie(second).with(csrf()))
        .andExpect(redirectedUrl("/account/sessions"));
    mvc.perform(get("/account").cookie(first)).andExpect(status().isFound());
    mvc.perform(post("/account/sessions/end-all").cookie(second).with(csrf()));
    mvc.perform(get("/account").cookie(second)).andExpect(status().isFound());
  }

  @Test
  void aRoleThatIsTakenAwayIsGoneAtOnce() throws Exception {
    Actor moderator = SignedIn.person(context, "Rob Role", Role.MODERATOR);
    Cookie session = session(signIn("rob.role@club.example", SignedIn.PASSWORD, ""));
    mvc.perform(get("/admin/joining").cookie(session)).andExpect(status().isOk());
    context.getBean(Accounts.class).changeRole(moderator.id(), Role.MEMBER);
    mvc.perform(get("/admin/joining").cookie(session)).andExpect(status().isForbidden());
  }

  @Test
  void whatSomebodySignedInReadsIsKeptByNoCacheForOthers() throws Exception {
    mvc.perform(get("/families"))
        .andExpect(header().string("Vary", containsString("Cookie")))
        .andExpect(header().string("Cache-Control", "no-cache"))
        .andExpect(header().exists("ETag"));
    mvc.perform(get("/families").with(SignedIn.as(Role.MEMBER)))
        .andExpect(header().string("Vary", containsString("Cookie")))
        .andExpect(header().string("Cache-Control", "no-cache, private"))
        .andExpect(header().doesNotExist("ETag"));
  }

  @Test
  void noPasswordHashOrCodeStandsInTheLog() throws Exception {
    guess("ann.other@club.example", "198.51.100.66");
    signIn("ann.other@club.example", SignedIn.PASSWORD, "");
    String log =
        mvc.perform(get("/admin/log").with(SignedIn.as(Role.KEEPER)))
            .andExpect(status().isOk())
            .andReturn()
            .getResponse()
            .getContentAsString();
    assertThat(log)
        .contains("sign-in failed")
        .contains("198.51.100.…")
        .doesNotContain("198.51.100.66")
        .doesNotContain("a guess")
        .doesNotContain(SignedIn.PASSWORD)
        .doesNotContain("argon2");
  }

  private static Cookie session(ResultActions answer) {
    Cookie cookie = answer.andReturn().getResponse().getCookie("yearline");
    assertThat(cookie).isNotNull();
    return cookie;
  }

  @Test
  void aFormWithoutItsTokenIsRefused() throws Exception {
    mvc.perform(
            post("/sign-in")
                .param("email", "ann.other@club.example")
                .param("password", SignedIn.PASSWORD)
                .header("Origin", "https://elsewhere.example"))
        .andExpect(status().isForbidden())
        .andExpect(header().doesNotExist("Set-Cookie"));
  }

  @Test
  void aMethodThatAPageDoesNotKnowIsSaidToBeThat() throws Exception {
    mvc.perform(post("/families"))
        .andExpect(status().isMethodNotAllowed())
        .andExpect(header().string("Allow", startsWith("GET")));
    mvc.perform(post("/no-such-page")).andExpect(status().isNotFound());
  }
}
