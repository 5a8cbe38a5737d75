package club.yearline.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import club.yearline.accounts.WholeApplication;
import club.yearline.catalog.Edition;
import club.yearline.catalog.EntryRef;
import club.yearline.effectivity.Entry;
import club.yearline.testing.Sample;
import club.yearline.testing.SignedIn;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.context.TestPropertySource;

/** Registering airframes, and what hostile or hasty people get. */
@WholeApplication
@TestPropertySource(properties = "start.of=register")
class RegisteringTest extends RegisterDesk {

  private static final String SCRIPT = "<script>alert(1)</script>";

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
    List<Entry> alike =
        List.of(
            Sample.family("whimbrel"),
            Sample.variant("la-5", "whimbrel", 1964, 1968),
            Sample.series("w", "whimbrel", "LT-"),
            Sample.block("w-1965", "w", "LT-0001", "LT-0100", "la-5", 1965));
    publication.publish(Edition.of("Two families numbered alike", null, alike));
    try {
      chooses("la-5/1965/w");
    } finally {
      Edition away = Edition.of("One again", null, List.of());
      publication.publish(away.withdrawing(alike.stream().map(EntryRef::of).toList()));
    }
  }

  private void chooses(String choice) throws Exception {
    Map<String, String> typed = new LinkedHashMap<>(Map.of("serial", "LT-0042"));
    MockHttpServletResponse answer = send(owner, post("/fleet"), typed);
    assertThat(answer.getStatus()).isEqualTo(422);
    assertThat(
            Jsoup.parse(answer.getContentAsString()).select("input[name=meant]").eachAttr("value"))
        .hasSize(2)
        .contains(choice);
    typed.put("meant", choice);
    String page = register(owner, typed);
    assertThat(body(owner, page)).contains("1965");
    Map<String, String> again = new LinkedHashMap<>();
    Jsoup.parse(body(owner, page + "/edit"))
        .select("form[action$=/edit] [name]")
        .forEach(f -> again.put(f.attr("name"), f.val()));
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
}
