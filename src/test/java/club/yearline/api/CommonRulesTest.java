package club.yearline.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What holds for every call: revisions, caching, methods, forms, parameters. */
class CommonRulesTest extends ApiCalls {

  private static final String YEAR_LONG = "max-age=31536000, public, immutable";

  @LocalServerPort private int port;
  @Autowired private JdbcClient jdbc;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/families",
        "/families/turnstone",
        "/variants/la-2b",
        "/expected?serial=LT-0412",
        "/timeline?feature=door-latch",
        "/differences?from=la-2b:1966&to=la-2b:1968",
        "/resolve?q=LT-0412",
        "/findings"
      })
  void anAnswerNamesItsRevisionAndMayBeAskedForAtAnEarlierOne(String question) {
    String fixed = question + (question.contains("?") ? "&" : "?") + "rev=1";
    assertThat(get("/api/v1" + question).ok().at("/revision").asInt()).isEqualTo(NEWEST);
    assertThat(get("/api/v1" + fixed).ok().at("/revision").asInt()).isEqualTo(1);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"/families?rev=1", "/expected?serial=LT-0412&rev=1", "/impact?from=1&to=2"})
  void anAnswerAtAFixedRevisionNeverChanges(String question) {
    Answer answer = get("/api/v1" + question).ok();
    assertThat(answer.header("Cache-Control")).isEqualTo(YEAR_LONG);
    assertThat(answer.header("ETag")).startsWith("\"");
    Answer again = get("/api/v1" + question, "If-None-Match", answer.header("ETag"));
    assertThat(again.status()).isEqualTo(304);
    assertThat(again.text()).isEmpty();
  }

  @Test
  void anAnswerAtTheNewestRevisionIsAskedForAgain() {
    Answer answer = get("/api/v1/expected?serial=LT-0412").ok();
    assertThat(answer.header("Cache-Control")).isEqualTo("no-cache");
    Answer again = get("/api/v1/expected?serial=LT-0412", "If-None-Match", answer.header("ETag"));
    assertThat(again.status()).isEqualTo(304);
    assertThat(get("/api/v1/expected?serial=LT-0412", "If-None-Match", "W/\"1-other\"").status())
        .isEqualTo(200);
  }

  @Test
  void aRefusalIsNotKept() {
    Answer answer = get("/api/v1/variants/la-99?rev=1").problem(404, "unknown-variant");
    assertThat(answer.header("Cache-Control")).isNull();
    assertThat(answer.header("ETag")).isNull();
  }

  @ParameterizedTest
  @CsvSource({
    "8, 404, unknown-revision",
    "-1, 404, unknown-revision",
    "99999999999999999999, 404, unknown-revision",
    "newest, 400, revision-unreadable",
    "1.0, 400, revision-unreadable",
    "1e3, 400, revision-unreadable",
    "0x1, 400, revision-unreadable",
    "%D9%A1, 400, revision-unreadable",
    "%00, 400, revision-unreadable",
    "1%27%20OR%201=1, 400, revision-unreadable",
    "%3Cscript%3E, 400, revision-unreadable",
  })
  void aRevisionThatIsNoneIsRefused(String rev, int status, String kind) {
    get("/api/v1/families?rev=" + rev).problem(status, kind).about("rev");
  }

  @Test
  void anEndlessRevisionIsNotRepeatedInFull() {
    assertThat(
            get("/api/v1/families?rev=" + "9".repeat(7000)).problem(404, "unknown-revision").text())
        .hasSizeLessThan(1000);
    assertThat(
            get("/api/v1/families?rev=" + "x".repeat(7000))
                .problem(400, "revision-unreadable")
                .text())
        .hasSizeLessThan(1000);
  }

  @Test
  void anEmptyRevisionIsTheNewest() {
    assertThat(get("/api/v1/families?rev=").ok().at("/revision").asInt()).isEqualTo(NEWEST);
  }

  @Test
  void revisionZeroIsTheEmptyCatalogue() {
    assertThat(get("/api/v1/families?rev=0").ok().text())
        .isEqualTo("{\"revision\":0,\"families\":[]}");
  }

  @Test
  void aParameterThatTheCallDoesNotKnowIsRefusedWithThoseItKnows() {
    Answer answer =
        get("/api/v1/expected?variant=la-2b&year=1966&serail=LT-0412")
            .problem(400, "parameter-unknown")
            .about("serail");
    assertThat(answer.at("/detail").asString()).contains("neighbours, rev, serial, variant, year");
    get("/api/v1/impact?from=1&to=2&rev=1").problem(400, "parameter-unknown").about("rev");
    get("/api/v1/families?rev%5B%5D=1").problem(400, "parameter-unknown").about("rev[]");
  }

  @Test
  void aParameterGivenTwiceIsRefused() {
    get("/api/v1/expected?serial=LT-0412&serial=LT-0501")
        .problem(400, "parameter-repeated")
        .about("serial");
    get("/api/v1/families?rev=1&rev=2").problem(400, "parameter-repeated").about("rev");
  }

  @ParameterizedTest
  @ValueSource(strings = {"POST", "PUT", "PATCH", "DELETE"})
  void anotherMethodIsAnsweredWithThoseThereAre(String method) throws IOException {
    assertThat(raw(method + " /api/v1/families"))
        .startsWith("HTTP/1.1 405 ")
        .contains("Allow: GET", "application/problem+json", "/problems/method-not-allowed")
        .contains("does not answer to " + method);
  }

  @Test
  void headIsAnsweredLikeGetWithoutABody() throws IOException {
    assertThat(raw("HEAD /api/v1/families"))
        .startsWith("HTTP/1.1 200 ")
        .contains("ETag: W/", "Content-Type: application/json")
        .doesNotContain("{");
  }

  @ParameterizedTest
  @ValueSource(strings = {"text/html", "application/xml", "application/yaml", "garbage"})
  void onlyJsonIsMade(String accepted) {
    get("/api/v1/families", "Accept", accepted).problem(406, "not-acceptable");
  }

  @ParameterizedTest
  @ValueSource(strings = {"*/*", "application/*", "application/json;q=0.5, text/html"})
  void whoeverAcceptsJsonGetsIt(String accepted) {
    assertThat(get("/api/v1/families", "Accept", accepted).ok().type())
        .isEqualTo("application/json");
  }

  @ParameterizedTest
  @ValueSource(strings = {"/api/v1/nothing", "/api/v1", "/api/v1/families/", "/api/v1/variants/"})
  void anAddressThatIsNoCallPointsToTheDescription(String address) {
    assertThat(get(address).problem(404, "not-found").at("/advice").asString())
        .contains("/api/openapi");
  }

  @Test
  void theKindOfEveryProblemHasAPage() {
    BadQuestions.all()
        .map(q -> ask(q.address()).at("/type").asString())
        .distinct()
        .forEach(
            type -> {
              assertThat(type).startsWith("/problems/");
              assertThat(get(type).status()).as(type).isEqualTo(200);
            });
  }

  @ParameterizedTest
  @CsvSource({
    "GET /api/v1/expected?serial=%zz, 400, address-unreadable",
    "GET /api/v1/families?rev[]=1, 400, parameter-unknown",
    "GET /api/v1/families?<b>, 400, parameter-unknown",
    "GET /api/v1/variants/a;b=c, 400, not-understood",
    "GET /api/v2/families, 404, not-found",
    "DELETE /api/v1/families, 405, method-not-allowed",
  })
  void whatTheContainerWouldRefuseIsAProblemToo(String request, int status, String kind)
      throws IOException {
    assertThat(raw(request))
        .startsWith("HTTP/1.1 " + status + " ")
        .contains("application/problem+json", "/problems/" + kind, "\"advice\"")
        .doesNotContain("Exception", "Tomcat");
  }

  @Test
  void aClosedCatalogueIsAnsweredToNobodyWithoutAnAccount() throws IOException {
    close(true);
    try {
      await().until(() -> raw("GET /api/v1/families").startsWith("HTTP/1.1 401 "));
      assertThat(raw("GET /api/v1/families"))
          .contains("application/problem+json", "/problems/denied", "\"advice\"")
          .doesNotContain("turnstone");
    } finally {
      close(false);
      await().until(() -> raw("GET /api/v1/families").startsWith("HTTP/1.1 200 "));
    }
  }

  private void close(boolean closed) {
    jdbc.sql("update club set closed = :closed").param("closed", closed).update();
  }

  /** What comes back from the port for a request line that no client library would write. */
  private String raw(String request) throws IOException {
    try (Socket socket = new Socket("localhost", port)) {
      socket
          .getOutputStream()
          .write(
              (request + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n")
                  .getBytes(StandardCharsets.US_ASCII));
      return new BufferedReader(
              new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8))
          .lines()
          .collect(Collectors.joining("\n"));
    }
  }
}
