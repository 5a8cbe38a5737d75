package club.yearline.web;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import club.yearline.testing.PageTest;
import jakarta.servlet.RequestDispatcher;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

@PageTest
@Import(ErrorsTest.Troubles.class)
class ErrorsTest {

  @Autowired private MockMvc mvc;

  @RestController
  static class Troubles {

    @GetMapping({"/expected", "/api/v1/expected"})
    String ask(@RequestParam int rev, @RequestParam(required = false) Fit fit) {
      return "asked";
    }

    @GetMapping({"/families/gone", "/api/v1/families/gone"})
    String gone() {
      throw Refusal.notFound("not-found");
    }

    @GetMapping({"/variants/early", "/api/v1/variants/early"})
    String outside() {
      throw Refusal.unprocessable("unprocessable")
          .with("runs", List.of(Map.of("first", 1964)))
          .at("year", "expected.choice", 1964);
    }

    @GetMapping({"/features/broken", "/api/v1/features/broken"})
    String broken() {
      throw new IllegalStateException("secret of the engine room");
    }

    @PostMapping("/api/v1/spot")
    String spot(@RequestBody Map<String, Object> question) {
      return "spotted";
    }

    enum Fit {
      STANDARD,
      OPTION
    }
  }

  @ParameterizedTest
  @CsvSource({
    "/expected?rev=abc, 400",
    "/expected, 400",
    "/families/gone, 404",
    "/families/no-such-page, 404",
    "/variants/early, 422",
    "/features/broken, 500",
  })
  void aPageSaysWhatIsWrongAndWhatToDo(String address, int status) throws Exception {
    mvc.perform(get(address).accept(MediaType.TEXT_HTML))
        .andExpect(status().is(status))
        .andExpect(content().contentTypeCompatibleWith(MediaType.TEXT_HTML))
        .andExpect(content().string(containsString("What to do")))
        .andExpect(content().string(containsString("Error " + status)))
        .andExpect(content().string(not(containsString("??"))));
  }

  @ParameterizedTest
  @CsvSource({
    "/api/v1/expected?rev=abc, 400, parameter-unreadable",
    "/api/v1/expected, 400, parameter-missing",
    "/api/v1/families/gone, 404, not-found",
    "/api/v1/families/no-such-thing, 404, not-found",
    "/api/v1/variants/early, 422, unprocessable",
    "/api/v1/features/broken, 500, internal",
    "/api/v1/spot, 405, method-not-allowed",
  })
  void aProgramGetsAProblem(String address, int status, String code) throws Exception {
    mvc.perform(get(address))
        .andExpect(status().is(status))
        .andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON))
        .andExpect(jsonPath("$.type").value("/problems/" + code))
        .andExpect(jsonPath("$.status").value(status))
        .andExpect(jsonPath("$.title").isNotEmpty())
        .andExpect(jsonPath("$.detail").isNotEmpty());
  }

  @Test
  void anUnreadableParameterIsNamedWithWhatWasExpected() throws Exception {
    mvc.perform(get("/api/v1/expected?rev=abc"))
        .andExpect(
            jsonPath("$.detail")
                .value("“rev” was given as “abc”; expected there: a whole number."));
    mvc.perform(get("/api/v1/expected?rev=1&fit=loose"))
        .andExpect(jsonPath("$.detail").value(containsString("one of standard, option")));
  }

  @Test
  void whatWasTypedIsShownAsTextNeverAsMarkup() throws Exception {
    mvc.perform(get("/expected").param("rev", "<script>alert(1)</script>"))
        .andExpect(content().string(not(containsString("<script>alert"))))
        .andExpect(content().string(containsString("&lt;script&gt;")));
  }

  @Test
  void aRefusalCarriesItsMembersAndFaults() throws Exception {
    mvc.perform(get("/api/v1/variants/early"))
        .andExpect(jsonPath("$.runs[0].first").value(1964))
        .andExpect(jsonPath("$.errors[0].field").value("year"))
        .andExpect(jsonPath("$.errors[0].message").value("one of 1964"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"/features/broken", "/api/v1/features/broken"})
  void aFailureShowsNothingOfTheInside(String address) throws Exception {
    mvc.perform(get(address))
        .andExpect(content().string(not(containsString("secret"))))
        .andExpect(content().string(not(containsString("IllegalState"))));
  }

  @Test
  void aWrongMethodNamesTheRightOnes() throws Exception {
    mvc.perform(get("/api/v1/spot"))
        .andExpect(header().string("Allow", "POST"))
        .andExpect(jsonPath("$.detail").value(containsString("it answers to POST")));
  }

  @Test
  void aBodyThatIsNoJsonIsAProblem() throws Exception {
    mvc.perform(post("/api/v1/spot").contentType(MediaType.APPLICATION_JSON).content("{"))
        .andExpect(status().isBadRequest())
        .andExpect(jsonPath("$.type").value("/problems/body-unreadable"));
    mvc.perform(post("/api/v1/spot").contentType(MediaType.TEXT_PLAIN).content("x"))
        .andExpect(status().isUnsupportedMediaType())
        .andExpect(jsonPath("$.type").value("/problems/media-type-unsupported"));
  }

  @Test
  void aRefusalOfTheFiltersIsRenderedLikeAnyOther() throws Exception {
    mvc.perform(reported(403, "/admin"))
        .andExpect(status().isForbidden())
        .andExpect(content().string(containsString("Error 403")));
    mvc.perform(reported(403, "/api/v1/families"))
        .andExpect(status().isForbidden())
        .andExpect(jsonPath("$.type").value("/problems/denied"));
  }

  @Test
  void eachKindOfProblemHasAPage() throws Exception {
    mvc.perform(get("/problems/parameter-missing"))
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("A part of the request is missing")));
    mvc.perform(get("/problems/never-heard-of")).andExpect(status().isNotFound());
  }

  /** What the container does after a filter has refused. */
  private static org.springframework.test.web.servlet.RequestBuilder reported(
      int status, String path) {
    return get("/error")
        .with(
            request -> {
              request.setDispatcherType(jakarta.servlet.DispatcherType.ERROR);
              return request;
            })
        .requestAttr(RequestDispatcher.ERROR_STATUS_CODE, status)
        .requestAttr(RequestDispatcher.ERROR_REQUEST_URI, path);
  }
}
