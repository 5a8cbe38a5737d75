package club.yearline.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import club.yearline.accounts.WholeApplication;
import club.yearline.uploads.Shots;
import java.io.ByteArrayInputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.context.TestPropertySource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What is recorded of airframes, compared, taken along and deleted. */
@WholeApplication
@TestPropertySource(properties = "start.of=register")
class SeenOnAirframesTest extends RegisterDesk {

  // What was seen

  @Test
  void whatDiffersIsToldFromWhatIsAsBuilt() throws Exception {
    String old = register(owner, Map.of("serial", "LT-0042"));
    observe(old, Map.of("value", "rotary"));
    String fresh = register(owner, Map.of("serial", "LT-0450"));
    observe(fresh, Map.of("value", "rotary"));
    assertThat(Jsoup.parse(body(owner, old)).select(".seen .mark").eachText())
        .containsExactly("differs");
    assertThat(Jsoup.parse(body(owner, fresh)).select(".seen .mark").eachText())
        .containsExactly("as built");
    Document list = Jsoup.parse(body(owner, "/fleet?differing=yes"));
    assertThat(list.select("tbody th a").eachText()).containsExactly("LT-0042");
    assertThat(list.select("tbody .mark a").eachText()).containsExactly("Feature door-latch");
    assertThat(list.selectFirst(".caution")).isNotNull();
    assertThat(Jsoup.parse(body(owner, old)).selectFirst(".caution")).isNotNull();
  }

  @Test
  void theListIsNarrowedByFamilyAndVariant() throws Exception {
    register(owner, Map.of("serial", "LT-0450"));
    for (String of : List.of("", "family/turnstone", "variant/la-2b")) {
      assertThat(body(owner, "/fleet?of=" + of)).contains("LT-0450");
    }
    for (String of : List.of("family/nope", "variant/la-2c")) {
      assertThat(body(owner, "/fleet?of=" + of)).contains("None of these");
    }
    assertThat(fetch(owner, "/fleet?page=2").getStatus()).isEqualTo(404);
    assertThat(fetch(owner, "/fleet?page=x").getStatus()).isEqualTo(400);
  }

  @Test
  void anEmptyRegisterSaysWhatToDo() throws Exception {
    assertThat(Jsoup.parse(body(owner, "/fleet")).selectFirst(".empty").text())
        .contains("No airframe is registered yet");
  }

  @Test
  void anObservationSentTwiceIsRecordedOnce() throws Exception {
    String page = register(owner, Map.of("serial", "LT-0042"));
    Map<String, String> form = Map.of("token", UUID.randomUUID().toString());
    observe(page, form);
    observe(page, form);
    assertThat(count("observation")).isEqualTo(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"velcro", ""})
  void aValueThatTheFeatureDoesNotHaveIsRefused(String value) throws Exception {
    String page = register(owner, Map.of("serial", "LT-0042"));
    assertFault(observing(owner, page, Map.of("value", value)), "value");
    assertThat(count("observation")).isZero();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "yesterday", "2099-01-01", "1850-01-01", "2026-02-30"})
  void aDayThatCannotBeIsRefused(String day) throws Exception {
    String page = register(owner, Map.of("serial", "LT-0042"));
    assertFault(observing(owner, page, Map.of("on", day)), "on");
  }

  @Test
  void anUnknownFeatureIsRefused() throws Exception {
    String page = register(owner, Map.of("serial", "LT-0042"));
    assertThat(fetch(owner, page + "/observe?feature=nope").getStatus()).isEqualTo(404);
    assertThat(observing(owner, page, Map.of("feature", "nope")).getStatus()).isEqualTo(404);
    assertThat(body(owner, page + "/observe")).contains("door-latch");
  }

  @Test
  void aPhotographIsKeptByNobodyButItsReadersBrowser() throws Exception {
    String page = register(owner, Map.of("serial", "LT-0042"));
    observe(page, Map.of(), photograph(800));
    MockHttpServletResponse shown = fetch(owner, photographOf(page));
    assertThat(shown.getContentType()).isEqualTo("image/png");
    assertThat(shown.getHeader("Content-Security-Policy")).isEqualTo("default-src 'none'; sandbox");
    assertThat(shown.getHeader("X-Content-Type-Options")).isEqualTo("nosniff");
    assertThat(shown.getHeader("Cache-Control")).contains("private").contains("no-cache");
    assertThat(fetch(owner, photographOf(page) + "/small").getContentType())
        .isEqualTo("image/jpeg");
  }

  @Test
  void nothingIsRecordedUnlessEveryPhotographIsOne() throws Exception {
    String page = register(owner, Map.of("serial", "LT-0042"));
    MockMultipartFile fake =
        new MockMultipartFile("photographs", "latch.jpg", "image/jpeg", "<svg/>".getBytes());
    assertFault(observing(owner, page, Map.of(), photograph(8), fake), "photographs");
    MockMultipartFile document =
        new MockMultipartFile(
            "photographs", "log.pdf", "image/png", club.yearline.uploads.Documents.plain(true));
    assertFault(observing(owner, page, Map.of(), document), "photographs");
    MockMultipartFile[] many = new MockMultipartFile[6];
    for (int i = 0; i < many.length; i++) {
      many[i] = photograph(8 + i);
    }
    assertFault(observing(owner, page, Map.of(), many), "photographs");
    assertThat(count("observation")).isZero();
    assertThat(count("photograph")).isZero();
  }

  @Test
  void whatWasTakenBackIsGoneWithItsPhotographs() throws Exception {
    String page = register(owner, Map.of("serial", "LT-0042"));
    observe(page, Map.of(), photograph(8));
    long seen = jdbc.sql("select id from observation").query(Long.class).single();
    String remove = page + "/observations/" + seen + "/remove";
    assertThat(send(owner, post(remove), Map.of()).getRedirectedUrl()).isEqualTo(page);
    assertThat(send(owner, post(remove), Map.of()).getRedirectedUrl()).isEqualTo(page);
    assertThat(count("observation") + count("photograph")).isZero();
  }

  // Taking along and deleting

  @Test
  void theExportHoldsAllThatTheRegisterKeepsForAMemberAndNothingElse() throws Exception {
    String page =
        register(owner, Map.of("serial", "LT-0042", "registration", "QZ-1", "remarks", "=1+1"));
    observe(page, Map.of("note", "stiff", "observer", "Ann"), photograph(8), photograph(9));
    share(other, register(other, Map.of("serial", "LT-0007")));
    Map<String, byte[]> zip = unzipped(fetch(owner, "/fleet/export").getContentAsByteArray());
    JsonNode register = new JsonMapper().readTree(zip.get("register.json"));
    assertThat(register.get("airframes")).hasSize(1);
    JsonNode airframe = register.get("airframes").get(0);
    assertThat(airframe.get("serial").asString()).isEqualTo("LT-0042");
    assertThat(airframe.get("registration").asString()).isEqualTo("QZ-1");
    assertThat(airframe.get("remarks").asString()).isEqualTo("=1+1");
    JsonNode seen = airframe.get("observations").get(0);
    assertThat(seen.get("value").asString()).isEqualTo("rotary");
    assertThat(seen.get("note").asString()).isEqualTo("stiff");
    assertThat(seen.get("observer").asString()).isEqualTo("Ann");
    assertThat(seen.get("photographs")).hasSize(2);
    for (JsonNode path : seen.get("photographs")) {
      assertThat(Shots.open(zip.get(path.asString())).getHeight()).isEqualTo(8);
    }
    assertThat(zip).hasSize(3);
  }

  private static Map<String, byte[]> unzipped(byte[] bytes) throws Exception {
    Map<String, byte[]> files = new LinkedHashMap<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(bytes))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        files.put(entry.getName(), in.readAllBytes());
      }
    }
    return files;
  }

  @Test
  void aDeletedAirframeIsGone() throws Exception {
    String page = register(owner, Map.of("serial", "LT-0042"));
    observe(page, Map.of(), photograph(8));
    assertThat(body(owner, page + "/delete")).contains("observations: 1", "photographs: 1");
    assertThat(send(owner, post(page + "/delete"), Map.of()).getRedirectedUrl())
        .isEqualTo("/fleet");
    assertThat(fetch(owner, page).getStatus()).isEqualTo(404);
    assertThat(count("airframe") + count("observation") + count("photograph")).isZero();
  }
}
