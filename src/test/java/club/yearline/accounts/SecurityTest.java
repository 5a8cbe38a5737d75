package club.yearline.accounts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.request;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import club.yearline.testing.PageTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.http.HttpMethod;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.MvcResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RestController;

@PageTest
@Import(SecurityTest.Doors.class)
class SecurityTest {

  @Autowired private MockMvc mvc;

  @RestController
  static class Doors {

    @GetMapping({"/families/turnstone", "/api/v1/families/turnstone", "/unlisted", "/admin"})
    String read() {
      return "open";
    }

    @PostMapping({"/api/v1/spot", "/api/v1/families/turnstone", "/families/turnstone"})
    String ask() {
      return "open";
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/families/turnstone",
        "/api/v1/families/turnstone",
        "/css/yearline.css",
        "/favicon.svg",
        "/robots.txt"
      })
  void anyoneReadsPagesInterfaceAndFiles(String path) throws Exception {
    mvc.perform(get(path)).andExpect(status().isOk());
    mvc.perform(request(HttpMethod.HEAD, path)).andExpect(status().isOk());
  }

  @ParameterizedTest
  @ValueSource(strings = {"/unlisted", "/family", "/api/v2/families", "/actuator/env"})
  void whatIsNotListedIsDeniedAsIfItWereNotThere(String path) throws Exception {
    mvc.perform(get(path)).andExpect(status().isNotFound());
  }

  @Test
  void aPageForMembersSendsAVisitorToSignInAndBack() throws Exception {
    mvc.perform(get("/admin")).andExpect(redirectedUrl("/sign-in?to=%2Fadmin"));
  }

  @Test
  void nothingIsWrittenWithoutAnAccount() throws Exception {
    mvc.perform(post("/families/turnstone")).andExpect(status().isForbidden());
    mvc.perform(post("/api/v1/families/turnstone")).andExpect(status().isForbidden());
    mvc.perform(request(HttpMethod.DELETE, "/api/v1/families/turnstone"))
        .andExpect(status().isMethodNotAllowed());
  }

  @Test
  void aLongQuestionOfAProgramIsReading() throws Exception {
    mvc.perform(post("/api/v1/spot")).andExpect(status().isOk());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/families/turnstone",
        "/api/v1/families/turnstone",
        "/css/yearline.css",
        "/unlisted"
      })
  void everyAnswerTellsTheBrowserToBeCareful(String path) throws Exception {
    mvc.perform(get(path))
        .andExpect(header().string("Content-Security-Policy", containsString("default-src 'self'")))
        .andExpect(header().string("Content-Security-Policy", not(containsString("unsafe"))))
        .andExpect(header().string("X-Content-Type-Options", "nosniff"))
        .andExpect(header().string("Referrer-Policy", "same-origin"))
        .andExpect(header().exists("Permissions-Policy"))
        .andExpect(header().string("X-Frame-Options", "DENY"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"/families/turnstone", "/api/v1/families/turnstone", "/unlisted"})
  void readersGetNoSessionAndNoCookie(String path) throws Exception {
    MvcResult result =
        mvc.perform(get(path)).andExpect(header().doesNotExist("Set-Cookie")).andReturn();
    // Spring's own session matchers make a session by looking.
    assertThat(result.getRequest().getSession(false)).isNull();
  }
}
