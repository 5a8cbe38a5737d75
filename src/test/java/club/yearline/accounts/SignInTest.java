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
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

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
