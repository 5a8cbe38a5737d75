package club.yearline.accounts;

import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.request;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import club.yearline.testing.PageTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.http.HttpMethod;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RestController;

/** An open address that is asked with another method names those it answers to. */
@PageTest
@Import({WrongMethods.class, WrongMethodsTest.Doors.class})
class WrongMethodsTest {

  @Autowired private MockMvc mvc;

  @RestController
  static class Doors {

    @GetMapping({"/families/turnstone", "/api/v1/families/turnstone", "/admin"})
    String read() {
      return "open";
    }

    @PostMapping("/variants/la-2b")
    String write() {
      return "written";
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"POST", "PUT", "PATCH", "DELETE"})
  void aPageNamesItsMethods(String method) throws Exception {
    mvc.perform(request(HttpMethod.valueOf(method), "/families/turnstone"))
        .andExpect(status().isMethodNotAllowed())
        .andExpect(header().string("Allow", "GET"))
        .andExpect(header().exists("Content-Security-Policy"))
        .andExpect(header().doesNotExist("Set-Cookie"))
        .andExpect(content().contentTypeCompatibleWith(MediaType.TEXT_HTML))
        .andExpect(content().string(containsString("it answers to GET")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"POST", "PUT", "PATCH", "DELETE"})
  void aCallNamesItsMethods(String method) throws Exception {
    mvc.perform(request(HttpMethod.valueOf(method), "/api/v1/families/turnstone"))
        .andExpect(status().isMethodNotAllowed())
        .andExpect(header().string("Allow", "GET"))
        .andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON));
  }

  @ParameterizedTest
  @CsvSource({"POST, /admin", "DELETE, /admin", "POST, /families/nothing", "POST, /variants/la-2b"})
  void whatIsNotOpenAndWhatWouldBeDoneIsStillDenied(String method, String path) throws Exception {
    mvc.perform(request(HttpMethod.valueOf(method), path)).andExpect(status().isForbidden());
  }

  @Test
  void readingPassesAsBefore() throws Exception {
    mvc.perform(request(HttpMethod.GET, "/families/turnstone")).andExpect(status().isOk());
    mvc.perform(request(HttpMethod.GET, "/admin")).andExpect(status().isNotFound());
  }
}
