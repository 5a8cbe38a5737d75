package club.yearline.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.accounts.WholeApplication;
import club.yearline.catalog.Edition;
import club.yearline.catalog.Publication;
import club.yearline.catalog.Snapshots;
import club.yearline.testing.Sample;
import club.yearline.testing.SignedIn;
import club.yearline.uploads.Shots;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.MockMultipartHttpServletRequestBuilder;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The pages of the register: who may do what, and what hostile or hasty people get. */
@WholeApplication
class FleetPagesTest {

  private static final String SCRIPT = "<script>alert(1)</script>";

  @Autowired ApplicationContext context;
  @Autowired MockMvc mvc;
  @Autowired Publication publication;
  @Autowired Snapshots snapshots;
  @Autowired JdbcClient jdbc;

  private Actor owner;
  private Actor other;
  private Actor moderator;
  private Actor keeper;

  @BeforeEach
  void nobodyHasRegisteredAnything() {
    owner = SignedIn.person(context, "Mette Member", Role.MEMBER);
    other = SignedIn.person(context, "Odd Other", Role.MEMBER);
    moderator = SignedIn.person(context, "Mona Moderator", Role.MODERATOR);
    keeper = SignedIn.person(context, "Kari Keeper", Role.KEEPER);
    if (snapshots.head().number() == 0) {
      publication.publish(Edition.of("Published", "Å", Sample.turnstone()));
    }
    jdbc.sql("delete from airframe").update();
  }

  // Registering

  @Test
  void aSerialIsEnoughToRegister() throws Exception {
    String page = register(owner, Map.of("serial", "lt 42", "registration", "se-abc"));
    Document shown = Jsoup.parse(body(owner, page));
    assertThat(shown.selectFirst("h1").text()).isEqualTo("SE-ABC · LT-0042");
    assertThat(shown.select(".stamps dd").eachText())
        .contains("SE-ABC", "Sweden", "LT-0042", "1964", "Mette Member");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "serial  |            |      | Nothing says which airframe",
        "serial  | LT-0042    | 1966 | lies in LT-0001",
        "serial  | LT-9999    |      | No recorded block holds",
        "serial  | QQ-1       |      | serial of no recorded series",
        "year    | LT-0042    | 19x6 | not a year",
      })
  void whatCannotBeIsRefusedWithTheReason(String field, String serial, String year, String reason)
      throws Exception {
    Map<String, String> typed = new LinkedHashMap<>();
    typed.put("serial", serial == null ? "" : serial);
    typed.put("year", year == null ? "" : year);
    MockHttpServletResponse answer = send(owner, post("/fleet"), typed);
    assertThat(answer.getStatus()).isEqualTo(422);
    Document page = Jsoup.parse(answer.getContentAsString());
    assertThat(page.selectFirst("#" + field + "-fault").text()).contains(reason);
    assertThat(page.selectFirst("#serial").val()).isEqualTo(typed.get("serial"));
    assertThat(count("airframe")).isZero();
  }

  @Test
  void aSerialOfSeveralAirframesIsAChoice() throws Exception {
    publication.publish(
        Edition.of(
            "Two families numbered alike",
            null,
            List.of(
                Sample.family("whimbrel"),
                Sample.variant("la-5", "whimbrel", 1964, 1968),
                Sample.series("w", "whimbrel", "LT-"),
                Sample.block("w-1965", "w", "LT-0001", "LT-0100", "la-5", 1965))));
    Map<String, String> typed = new LinkedHashMap<>(Map.of("serial", "LT-0042"));
    MockHttpServletResponse answer = send(owner, post("/fleet"), typed);
    assertThat(answer.getStatus()).isEqualTo(422);
    List<String> choices =
        Jsoup.parse(answer.getContentAsString()).select("input[name=meant]").eachAttr("value");
    assertThat(choices).hasSize(2).contains("la-5/1965/w");
    typed.put("meant", "la-5/1965/w");
    String page = register(owner, typed);
    assertThat(body(owner, page)).contains("1965");
    Document form = Jsoup.parse(body(owner, page + "/edit"));
    Map<String, String> again = new LinkedHashMap<>();
    form.select("form[action$=/edit] [name]").forEach(f -> again.put(f.attr("name"), f.val()));
    again.put("variant", "");
    again.put("year", "");
    assertThat(send(owner, post(page + "/edit"), again).getRedirectedUrl()).isEqualTo(page);
  }

  @Test
  void aFormSentTwiceRegistersOnce() throws Exception {
    Map<String, String> typed =
        Map.of("variant", "la-2b", "year", "1966", "token", UUID.randomUUID().toString());
    String page = register(owner, typed);
    assertThat(register(owner, typed)).isEqualTo(page);
    assertThat(count("airframe")).isEqualTo(1);
  }

  @Test
  void aSerialIsRegisteredOnceByOneMemberAndByOthersToo() throws Exception {
    register(owner, Map.of("serial", "LT-0042"));
    MockHttpServletResponse again = send(owner, post("/fleet"), Map.of("serial", "LT 42"));
    assertThat(again.getStatus()).isEqualTo(422);
    assertThat(again.getContentAsString()).contains("You have registered LT-0042 already");
    register(other, Map.of("serial", "LT-0042"));
    assertThat(count("airframe")).isEqualTo(2);
  }

  @Test
  void aMarkThatDoesNotFitItsStateIsRefusedAndOneOfNoStateIsKept() throws Exception {
    MockHttpServletResponse answer =
        send(owner, post("/fleet"), Map.of("serial", "LT-0042", "registration", "SE-12"));
    assertThat(answer.getStatus()).isEqualTo(422);
    assertThat(Jsoup.parse(answer.getContentAsString()).selectFirst("#registration-fault").text())
        .contains("Sweden", "three letters");
    String page = register(owner, Map.of("serial", "LT-0042", "registration", "qz-1x"));
    assertThat(Jsoup.parse(body(owner, page)).select(".stamps dd").eachText())
        .contains("QZ-1X", "not known here");
  }

  // Hostile and hasty input

  @Test
  void scriptInEveryFieldIsShownAsText() throws Exception {
    for (String field : List.of("serial", "variant", "year", "registration", "remarks", "meant")) {
      MockHttpServletResponse answer = send(owner, post("/fleet"), Map.of(field, SCRIPT));
      assertThat(answer.getStatus()).isEqualTo(422);
      assertThat(answer.getContentAsString()).doesNotContain(SCRIPT);
    }
    String page = register(owner, Map.of("serial", "LT-0042", "remarks", SCRIPT));
    observe(page, Map.of("observer", SCRIPT, "note", SCRIPT));
    share(page);
    for (String path : List.of(page, page + "/edit", page + "/delete", "/fleet")) {
      assertThat(body(owner, path)).doesNotContain(SCRIPT);
    }
    assertThat(Jsoup.parse(body(other, page)).text()).contains(SCRIPT);
  }

  @Test
  void overLongTextsAreRefusedAndNothingIsStored() throws Exception {
    String page = register(owner, Map.of("serial", "LT-0042"));
    assertFault(
        send(owner, post("/fleet"), typed("LT-0043", "remarks", "x".repeat(4001))), "remarks");
    assertFault(
        send(owner, post("/fleet"), typed("LT-0043", "registration", "Q".repeat(21))),
        "registration");
    assertFault(send(owner, post("/fleet"), typed("9".repeat(41), "remarks", "")), "serial");
    assertFault(observing(owner, page, Map.of("observer", "x".repeat(121))), "observer");
    assertFault(observing(owner, page, Map.of("note", "x".repeat(1001))), "note");
    assertThat(count("airframe")).isEqualTo(1);
    assertThat(count("observation")).isZero();
  }

  private static Map<String, String> typed(String serial, String field, String text) {
    return Map.of("serial", serial, field, text);
  }

  private static void assertFault(MockHttpServletResponse answer, String field) throws Exception {
    assertThat(answer.getStatus()).isEqualTo(422);
    assertThat(Jsoup.parse(answer.getContentAsString()).selectFirst("#" + field + "-fault"))
        .isNotNull();
  }

  @Test
  void nothingIsStoredWithoutTheTokenOfOurForms() throws Exception {
    String page = register(owner, Map.of("serial", "LT-0042"));
    for (String path : List.of("/share", "/serial", "/delete", "/edit", "/observations")) {
      MockHttpServletResponse answer =
          mvc.perform(
                  post(page + path)
                      .param("shared", "true")
                      .param("shown", "true")
                      .with(SignedIn.as(owner)))
              .andReturn()
              .getResponse();
      assertThat(answer.getStatus() == 403 || answer.getForwardedUrl() != null).as(path).isTrue();
    }
    assertThat(
            jdbc.sql("select count(*) from airframe where not shared and not serial_shown")
                .query(Long.class)
                .single())
        .isEqualTo(1);
  }

  @Test
  void aStaleFormKeepsWhatWasTyped() throws Exception {
    String page = register(owner, Map.of("serial", "LT-0042"));
    Map<String, String> form =
        new LinkedHashMap<>(Map.of("serial", "LT-0042", "remarks", "Mine", "version", "0"));
    assertThat(send(owner, post(page + "/edit"), form).getRedirectedUrl()).isEqualTo(page);
    form.put("remarks", "Also mine");
    MockHttpServletResponse stale = send(owner, post(page + "/edit"), form);
    assertThat(stale.getStatus()).isEqualTo(409);
    Document shown = Jsoup.parse(stale.getContentAsString());
    assertThat(shown.selectFirst("#remarks").text()).isEqualTo("Also mine");
    assertThat(body(owner, page)).contains("Mine").doesNotContain("Also mine");
    form.put("version", shown.selectFirst("[name=version]").val());
    assertThat(send(owner, post(page + "/edit"), form).getRedirectedUrl()).isEqualTo(page);
    assertThat(body(owner, page)).contains("Also mine");
  }

  // Who sees what

  @Test
  void aPrivateAirframeIsNobodysButItsOwnersWhateverTheirRole() throws Exception {
    String page = register(owner, Map.of("serial", "LT-0042", "registration", "QZ-1"));
    observe(page, Map.of(), photograph(8));
    String photograph = photographOf(page);
    for (Actor actor : List.of(other, moderator, keeper)) {
      for (String path :
          List.of(page, page + "/edit", page + "/delete", page + "/observe", photograph)) {
        assertThat(fetch(actor, path).getStatus()).as(path).isEqualTo(404);
      }
      assertThat(fetch(actor, photograph + "/small").getStatus()).isEqualTo(404);
      assertThat(body(actor, "/fleet")).doesNotContain("LT-0042");
      assertChangesNothing(actor, page, 404);
    }
    assertThat(count("airframe")).isEqualTo(1);
    assertThat(refusal(other, "/fleet/999999").replace("999999", "#"))
        .as("what is hidden looks as what is not there")
        .isEqualTo(refusal(other, page).replace(page.substring("/fleet/".length()), "#"));
  }

  private String refusal(Actor actor, String path) throws Exception {
    return Jsoup.parse(fetch(actor, path).getContentAsString()).text();
  }

  @Test
  void aSharedAirframeIsSeenByMembersAndChangedByItsOwnerOnly() throws Exception {
    String page = register(owner, Map.of("serial", "LT-0042"));
    observe(page, Map.of(), photograph(8));
    share(page);
    assertThat(body(other, "/fleet")).contains("LT-0042");
    assertThat(body(other, page)).contains("rotary").doesNotContain("/observations/");
    assertThat(fetch(other, photographOf(page)).getStatus()).isEqualTo(200);
    for (String path : List.of("/edit", "/delete", "/observe")) {
      assertThat(fetch(other, page + path).getStatus()).as(path).isEqualTo(403);
    }
    assertChangesNothing(other, page, 403);
    assertThat(mvc.perform(get(page)).andReturn().getResponse().getRedirectedUrl())
        .startsWith("/sign-in");
  }

  private void assertChangesNothing(Actor actor, String page, int status) throws Exception {
    String observation =
        jdbc.sql("select id from observation").query(Long.class).list().get(0).toString();
    Map<String, String> form =
        Map.of("shared", "false", "shown", "true", "serial", "LT-0043", "version", "0");
    for (String path :
        List.of(
            "/share", "/serial", "/delete", "/edit", "/observations/" + observation + "/remove")) {
      assertThat(send(actor, post(page + path), form).getStatus()).as(path).isEqualTo(status);
    }
    assertThat(observing(actor, page, Map.of()).getStatus()).isEqualTo(status);
    assertThat(count("observation")).isEqualTo(1);
  }

  @Test
  void aPhotographIsOfTheAirframeThatItsAddressNames() throws Exception {
    String page = register(owner, Map.of("serial", "LT-0042"));
    observe(page, Map.of(), photograph(8));
    String hidden = photographOf(page);
    String shared = register(other, Map.of("serial", "LT-0007"));
    share(other, shared);
    String forged = shared + hidden.substring(hidden.indexOf("/photographs"));
    assertThat(fetch(other, forged).getStatus()).isEqualTo(404);
    assertThat(fetch(owner, forged).getStatus()).isEqualTo(404);
  }

  // The box on the first page

  @ParameterizedTest
  @ValueSource(strings = {"QZ-AB1", "qzab1"})
  void theBoxLeadsToAnOwnOrSharedAirframeByItsMark(String typed) throws Exception {
    String page = register(owner, Map.of("serial", "LT-0042", "registration", "QZ-AB1"));
    String box = "/find?q=" + typed;
    assertThat(fetch(owner, box).getRedirectedUrl()).isEqualTo(page);
    for (Actor actor : List.of(other, keeper)) {
      assertThat(body(actor, box)).doesNotContain(page);
    }
    share(page);
    assertThat(fetch(other, box).getRedirectedUrl()).isEqualTo(page);
    MockHttpServletResponse visitor = mvc.perform(get(box)).andReturn().getResponse();
    assertThat(visitor.getContentAsString()).doesNotContain(page).doesNotContain("LT-0042");
    assertThat(body(owner, box + "&rev=1")).doesNotContain(page);
  }

  @Test
  void theBoxOffersAirframesOfOneMarkBesideWhatElseTheTextMayMean() throws Exception {
    String mine = register(owner, Map.of("serial", "LT-0042", "registration", "LT-0043"));
    Document found = Jsoup.parse(body(owner, "/find?q=LT-0043"));
    assertThat(found.select("main .rows a").eachAttr("href")).first().isEqualTo(mine);
    assertThat(found.select("main .rows a")).hasSizeGreaterThan(1);
  }

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

  // How the tests speak

  private long count(String table) {
    return jdbc.sql("select count(*) from " + table).query(Long.class).single();
  }

  private static MockMultipartFile photograph(int width) {
    byte[] bytes = Shots.file(Shots.quarters(width, 8, BufferedImage.TYPE_INT_RGB), "png");
    return new MockMultipartFile("photographs", width + ".png", "image/png", bytes);
  }

  private String photographOf(String page) {
    return page
        + "/photographs/"
        + jdbc.sql("select id from photograph").query(Long.class).single();
  }

  private MockHttpServletResponse fetch(Actor actor, String path) throws Exception {
    return mvc.perform(get(path).with(SignedIn.as(actor))).andReturn().getResponse();
  }

  private String body(Actor actor, String path) throws Exception {
    MockHttpServletResponse answer = fetch(actor, path);
    assertThat(answer.getStatus()).as(path).isEqualTo(200);
    return answer.getContentAsString();
  }

  private MockHttpServletResponse send(
      Actor actor, MockHttpServletRequestBuilder request, Map<String, String> typed)
      throws Exception {
    typed.forEach(request::param);
    return mvc.perform(request.with(SignedIn.as(actor)).with(csrf())).andReturn().getResponse();
  }

  private String register(Actor actor, Map<String, String> typed) throws Exception {
    MockHttpServletResponse answer = send(actor, post("/fleet"), typed);
    assertThat(answer.getStatus()).as(answer.getContentAsString()).isEqualTo(302);
    return answer.getRedirectedUrl();
  }

  private void share(String page) throws Exception {
    share(owner, page);
  }

  private void share(Actor actor, String page) throws Exception {
    assertThat(send(actor, post(page + "/share"), Map.of("shared", "true")).getStatus())
        .isEqualTo(302);
  }

  private void observe(String page, Map<String, String> typed, MockMultipartFile... photographs)
      throws Exception {
    assertThat(observing(owner, page, typed, photographs).getRedirectedUrl())
        .isEqualTo(page + "#f-door-latch");
  }

  private MockHttpServletResponse observing(
      Actor actor, String page, Map<String, String> typed, MockMultipartFile... photographs)
      throws Exception {
    Map<String, String> form = new LinkedHashMap<>();
    form.put("feature", "door-latch");
    form.put("value", "rotary");
    form.put("on", "2026-05-31");
    form.putAll(typed);
    MockMultipartHttpServletRequestBuilder request = multipart(page + "/observations");
    for (MockMultipartFile photograph : photographs) {
      request.file(photograph);
    }
    form.forEach(request::param);
    return mvc.perform(request.with(SignedIn.as(actor)).with(csrf())).andReturn().getResponse();
  }
}
