package club.yearline.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.catalog.Snapshots;
import club.yearline.testing.Database;
import club.yearline.testing.SignedIn;
import java.util.List;
import java.util.UUID;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/**
 * What the register says about the demo’s oil cooler on the bulkhead, LA-2B, recorded as LT-0735 to
 * LT-0760; here it is true that it cut in at LT-0748.
 */
@SpringBootTest
@AutoConfigureMockMvc
class EvidencePagesTest {

  private static final String CHANGE = "/changes/oil-cooler-bulkhead";
  private static final String EVIDENCE = CHANGE + "/evidence";

  @Autowired private MockMvc mvc;
  @Autowired private JdbcClient jdbc;
  @Autowired private ApplicationContext context;
  @Autowired private Snapshots snapshots;

  private RegisterRows register;

  @DynamicPropertySource
  static void settings(DynamicPropertyRegistry registry) {
    Database database = Database.h2();
    registry.add("spring.datasource.url", database::url);
    registry.add("spring.datasource.username", database::user);
    registry.add("spring.datasource.password", database::password);
  }

  @BeforeEach
  void emptyTheRegister() {
    jdbc.sql("delete from airframe").update();
    register = new RegisterRows(jdbc, SignedIn.person(context, Role.MEMBER).id());
  }

  private void looked() {
    for (int ordinal : new int[] {640, 680, 702, 712, 725, 731, 741, 745, 746}) {
      register.seen(ordinal, true, "oil-cooler", "front");
    }
    for (int ordinal : new int[] {749, 750, 758, 771, 790, 802, 830}) {
      register.seen(ordinal, true, "oil-cooler", "bulkhead");
    }
    register.seen(690, true, "oil-cooler", "bulkhead");
    register.seen(743, false, "oil-cooler", "front");
    register.seen(761, true, "oil-cooler", "none");
  }

  @Test
  void withoutAirframesItSaysSoAndWhatToDo() throws Exception {
    Document page = page(get(EVIDENCE));
    assertThat(page.text()).contains("No airframe of this variant was looked at");
    assertThat(page.select("main svg")).isEmpty();
    assertThat(page.select("a[href=/fleet]")).isNotEmpty();
  }

  @Test
  void itSaysInWordsWhereTheChangeCutIn() throws Exception {
    looked();
    Element plot = page(get(EVIDENCE)).selectFirst("section.evidence");
    assertThat(plot.selectFirst("h3").text()).isEqualTo("LA-2B");
    assertThat(plot.selectFirst(".lead").text())
        .isEqualTo("18 airframes: cut in between LT-0747 and LT-0749 (95 %)");
    assertThat(plot.text())
        .contains("1 airframe contradicts where it stands")
        .contains("A cut-in at one serial: ")
        .contains("airframes further off stand at the edge of the drawing")
        .contains("1 airframe does not count: its value was offered neither");
  }

  @Test
  void theDrawingHasATableOfTheSameContent() throws Exception {
    looked();
    Document page = page(get(EVIDENCE).with(SignedIn.as(Role.MEMBER)));
    Element drawing = page.selectFirst("figure.evidence-plot svg[role=img]");
    assertThat(drawing.select("path.is-old, path.is-new, path.is-old-coarse")).hasSize(3);
    assertThat(drawing.select("g.ring circle")).hasSize(1);
    assertThat(drawing.select("g.ring text").text()).isEqualTo("exchanged?");
    assertThat(drawing.select("path.growth").attr("d")).startsWith("M");
    assertThat(drawing.select("rect.held")).hasSize(1);
    List<String> rows = page.select("section.evidence tbody tr").eachText();
    assertThat(rows).hasSize(18);
    assertThat(rows).anyMatch(r -> r.startsWith("LT-0690 new") && r.contains("exchanged part"));
  }

  @Test
  void visitorsAndThoseWhoReadARevisionAreToldNumbersOnly() throws Exception {
    looked();
    for (Document page :
        List.of(
            page(get(EVIDENCE)), page(get(EVIDENCE + "?rev=1").with(SignedIn.as(Role.MEMBER))))) {
      List<String> rows = page.select("section.evidence tbody th").eachText();
      assertThat(rows).hasSize(18).allMatch(r -> r.startsWith("one of LT-"));
      assertThat(page.select("path.is-old, path.is-new")).hasSize(2);
      assertThat(page.select("section.evidence tbody").text()).doesNotContain("2026-");
      assertThat(page.text()).contains("each airframe is only told to be one of about ten");
    }
  }

  @Test
  void aSerialThatItsOwnerKeepsCannotBeReadOff() throws Exception {
    looked();
    String before = page(asked("LT-0739", "LT-0747")).html();
    assertThat(before).contains("one of LT-0737 to LT-0746").doesNotContain("LT-0743");
    jdbc.sql(
            "update airframe set serial_ordinal = 739, serial = 'LT-0739' where serial_ordinal = 743")
        .update();
    String after = page(asked("LT-0739", "LT-0747")).html();
    assertThat(withoutTokens(after)).isEqualTo(withoutTokens(before));
  }

  private static String withoutTokens(String html) {
    return html.replaceAll("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}", "");
  }

  @Test
  void aReaderMayWidenTheBoundsAndTheAddressHoldsThem() throws Exception {
    looked();
    Document page = page(asked("LT-0600", "lt 800"));
    assertThat(page.getElementById("plot-0-lo").val()).isEqualTo("LT-0600");
    assertThat(page.getElementById("plot-0-hi").val()).isEqualTo("lt 800");
    assertThat(page.selectFirst(".lead").text()).contains("between LT-0747 and LT-0749");
    assertThat(page.select("details.bounds[open]")).hasSize(1);
  }

  @Test
  void boundsThatCannotBeReadAreSaidAtTheirFields() throws Exception {
    Document page = page(asked("W-1", "LT-0760"));
    assertThat(page.getElementById("plot-0-lo-fault").text()).contains("no serial of the series");
    assertThat(page.getElementById("plot-0-lo").attr("aria-describedby"))
        .isEqualTo("plot-0-lo-fault");
    Document reversed = page(asked("LT-0800", "LT-0700"));
    assertThat(reversed.getElementById("plot-0-hi-fault").text()).contains("below the lowest");
    assertThat(page(asked("9".repeat(50), "LT-0760")).select(".fault")).hasSize(1);
  }

  @Test
  void theChangeLeadsThereAndNeverChangesAtARevision() throws Exception {
    looked();
    MockHttpServletResponse before = response(get(CHANGE + "?rev=1"));
    Document page = Jsoup.parse(before.getContentAsString());
    assertThat(page.select("a[href='" + EVIDENCE + "?rev=1']")).hasSize(1);
    assertThat(before.getHeader("Cache-Control")).contains("immutable");
    register.seen(759, true, "oil-cooler", "front");
    assertThat(response(get(CHANGE + "?rev=1")).getContentAsString())
        .isEqualTo(before.getContentAsString());
  }

  @Test
  void evidenceIsAskedForAnewEachTimeAlsoAtARevision() throws Exception {
    MockHttpServletResponse response = response(get(EVIDENCE + "?rev=1"));
    assertThat(response.getHeader("Cache-Control")).isEqualTo("no-cache, private");
    assertThat(response.getHeader("ETag")).isNull();
    assertThat(Jsoup.parse(response.getContentAsString()).text())
        .contains("observations have no revisions");
  }

  @Test
  void aChangeThatWasThereFromTheStartHasNoEvidence() throws Exception {
    assertThat(page(get("/changes/oil-cooler-none")).select("a[href$=evidence]")).isEmpty();
    assertThat(page(get("/changes/oil-cooler-none/evidence")).text())
        .contains("There is no cut-in to look for");
    assertThat(response(get("/changes/nothing/evidence")).getStatus()).isEqualTo(404);
  }

  @Test
  void everyChangeOfTheDemoHasAPage() throws Exception {
    looked();
    for (var change : snapshots.head().catalogue().records().changes()) {
      assertThat(response(get("/changes/" + change.key() + "/evidence")).getStatus())
          .as(change.key())
          .isEqualTo(200);
    }
  }

  @Test
  void aFullRegisterMakesASmallPage() throws Exception {
    for (int i = 0; i < 600; i++) {
      register.seen(244 + i, i % 3 == 0, "oil-cooler", i < 500 ? "front" : "bulkhead");
    }
    assertThat(response(get(EVIDENCE)).getContentAsString()).hasSizeLessThan(150_000);
  }

  @Test
  void aVisitorIsSentToSignInToProposeAndAMemberIsNot() throws Exception {
    looked();
    assertThat(page(get(EVIDENCE)).select("form[action=/corrections/narrow]")).isEmpty();
    assertThat(page(get(EVIDENCE)).text()).contains("Sign in to propose this");
    Document page = page(get(EVIDENCE).with(SignedIn.as(Role.MEMBER)));
    assertThat(page.select("form[action=/corrections/narrow] button").text())
        .isEqualTo("Propose LT-0747 to LT-0749 as a correction");
    long before = corrections();
    narrow(null, UUID.randomUUID().toString());
    assertThat(corrections()).isEqualTo(before);
  }

  @Test
  void nothingIsProposedWhereTheAirframesSayNoMoreThanTheRecord() throws Exception {
    register.seen(640, true, "oil-cooler", "front");
    Actor member = SignedIn.person(context, Role.MEMBER);
    assertThat(
            page(get(EVIDENCE).with(SignedIn.as(member)))
                .select("form[method=post][action$=narrow]"))
        .isEmpty();
    assertThat(narrow(member, "t").getStatus()).isEqualTo(422);
  }

  private long corrections() {
    return jdbc.sql("select count(*) from correction").query(Long.class).single();
  }

  private static MockHttpServletRequestBuilder asked(String lo, String hi) {
    return get(EVIDENCE).param("variant", "la-2b").param("lo", lo).param("hi", hi);
  }

  private MockHttpServletResponse narrow(@Nullable Actor actor, String token) throws Exception {
    MockHttpServletRequestBuilder request =
        post("/corrections/narrow")
            .param("change", "oil-cooler-bulkhead")
            .param("variant", "la-2b")
            .param("series", "lt")
            .param("token", token)
            .with(csrf());
    return response(actor == null ? request : request.with(SignedIn.as(actor)));
  }

  private Document page(MockHttpServletRequestBuilder request) throws Exception {
    MockHttpServletResponse response = response(request);
    assertThat(response.getStatus()).as(response.getContentAsString()).isEqualTo(200);
    return Jsoup.parse(response.getContentAsString());
  }

  private MockHttpServletResponse response(MockHttpServletRequestBuilder request) throws Exception {
    return mvc.perform(request).andReturn().getResponse();
  }
}
