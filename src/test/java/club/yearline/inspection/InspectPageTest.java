package club.yearline.inspection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.Mockito.when;

import club.yearline.accounts.SecurityConfiguration;
import club.yearline.catalog.Chapters;
import club.yearline.catalog.Contributor;
import club.yearline.catalog.Revision;
import club.yearline.catalog.Snapshot;
import club.yearline.catalog.Snapshots;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Catalogue;
import club.yearline.print.PdfMaker;
import club.yearline.testing.SmallCatalogue;
import club.yearline.web.Phrases;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.webmvc.test.autoconfigure.WebMvcTest;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.bean.override.mockito.MockitoBean;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** The pages of an inspection over the small catalogue at revision 12. */
@WebMvcTest({InspectController.class, ReportController.class})
@Import({
  SecurityConfiguration.class,
  Phrases.class,
  Chapters.class,
  Wording.class,
  FindingWords.class,
  Inspecting.class,
  ReportPaper.class,
  ReportWords.class,
  PdfMaker.class,
  InspectionSection.class
})
class InspectPageTest {

  private static final Snapshot SNAPSHOT =
      new Snapshot(
          new Revision(12, Instant.EPOCH, "note", Contributor.NOBODY, Contributor.NOBODY),
          Catalogue.of(SmallCatalogue.records()));

  @Autowired private MockMvcTester web;
  @MockitoBean private Snapshots snapshots;
  @MockitoBean private SavedInspections saved;

  @BeforeEach
  void publish() {
    when(snapshots.head()).thenReturn(SNAPSHOT);
    when(snapshots.at(12)).thenReturn(SNAPSHOT);
  }

  @Test
  void asksForTheClaimWhenOpenedWithoutOneAndCarriesWhatWasSeen() {
    Document page = ok("/inspect?o=door-latch:pull&o=power:145");
    assertThat(page.select("form.asking input[name=o]").eachAttr("value"))
        .containsExactly("door-latch:pull", "power:145");
    assertThat(page.select("form.inspecting")).isEmpty();
    assertThat(page.select("[role=alert]")).isEmpty();
  }

  @Test
  void listsTheFeaturesByChapterWithAButtonForEachValue() {
    Document page = ok("/inspect?serial=lt 12");
    assertThat(page.select("h1").text()).isEqualTo("LT-0012, LA-2 1957");
    assertThat(page.select(".group h3").eachText())
        .containsExactly("52 Doors", "72 Turbine/Turboprop engine");
    assertThat(page.select("#f-door-latch input[type=radio]").eachAttr("value"))
        .containsExactly("pull", "rotary", "");
    assertThat(page.select("#f-door-latch input[checked]").attr("value")).isEmpty();
    assertThat(page.select("#f-power input").attr("inputmode")).isEqualTo("decimal");
    assertThat(page.select("#f-power .with-unit").text()).isEqualTo("hp");
    assertThat(page.select(".caution").text()).contains("not approved data");
    assertThat(page.select("#answer .verdict").text()).isEqualTo("Too little was seen");
  }

  @Test
  void takesObservationsFromTheFormAndFromOtherPagesAlike() {
    Document form = ok("/inspect?serial=LT-0012&o.door-latch=rotary&o.power=145,0");
    Document carried = ok("/inspect?serial=LT-0012&o=door-latch:rotary&o=power:145.0");
    assertThat(form.select("#answer").html()).isEqualTo(carried.select("#answer").html());
    assertThat(form.select("#f-door-latch input[checked]").attr("value")).isEqualTo("rotary");
    assertThat(form.select("#found-door-latch .mark").text()).isEqualTo("fitted later");
  }

  @Test
  void tellsADifferenceInWordsWithWhereItBelongsAndWhatToAsk() {
    Document page = ok("/inspect?variant=la-2a&year=1958&o=door-latch:pull");
    assertThat(page.select("#answer .verdict").text()).isEqualTo("Check its identity");
    assertThat(page.select("#answer").text())
        .contains("As built it would be: rotary latch.")
        .contains("As built on: LA-2 1956")
        .contains("On some of: LA-2 1957")
        .contains("Bolts on: exchanged now and then.")
        .contains("Door latch: pull handle, where it was built with rotary latch.")
        .contains("LA-2 1956 explains what was seen best");
    assertThat(page.select("#answer .notice a").eachAttr("href"))
        .containsExactly(
            "/inspect?variant=la-2&year=1956&o=door-latch:pull",
            "/differences?from=la-2a:1958&to=la-2:1956");
  }

  @Test
  void showsWhatWasSeenThatIsNoFeatureOfTheVariant() {
    Document page = ok("/inspect?variant=la-2&year=1956&o=landing-light:wing");
    assertThat(page.select("#c-others #f-landing-light input[checked]").attr("value"))
        .isEqualTo("wing");
    assertThat(page.select("#answer .verdict").text()).isEqualTo("Too little was seen");
  }

  @Test
  void saysWhatIsNoNumberAndWhatTheCatalogueDoesNotKnow() {
    MvcTestResult result =
        get("/inspect?serial=LT-0012&o.power=lots&o=nothing:x&o=door-latch:none&o=door-latch:pull");
    assertThat(result).hasStatus(400);
    Document page = page(result);
    assertThat(page.select("#f-power-fault").text()).contains("“lots” is no number");
    assertThat(page.select("#f-power-n").attr("value")).isEqualTo("lots");
    assertThat(page.select("#f-power-n").attr("aria-invalid")).isEqualTo("true");
    assertThat(page.select("main > [role=alert]").text()).contains("nothing:x, door-latch:none");
    assertThat(page.select("#f-door-latch input[checked]").attr("value")).isEqualTo("pull");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "400 | serial=&variant=&year= | Nothing was asked",
        "404 | serial=ZZ-1 | is a serial of no recorded series",
        "422 | serial=LT-0035 | No recorded block holds LT-0035",
        "422 | variant=la-2&year=1970 | was not produced in 1970",
        "400 | variant=la-2&year=old | is not a year",
        "400 | serial=99999999999999999999999999999999999999999 | too long",
      })
  void refusesAClaimAsExpectedDoesAndKeepsWhatWasSeen(int status, String query, String says) {
    MvcTestResult result = get("/inspect?" + query + "&o=door-latch:pull");
    assertThat(result).hasStatus(status);
    Document page = page(result);
    assertThat(page.select("[role=alert] h2").text()).contains(says);
    assertThat(page.select("form.asking input[name=o]").attr("value")).isEqualTo("door-latch:pull");
    assertThat(page.select(".ways a[href^=/inspect]").eachAttr("href"))
        .allMatch(href -> href.contains("o=door-latch:pull"));
  }

  @Test
  void answersAloneWhatChangesAsOneGoes() {
    MvcTestResult result =
        get("/inspect/findings?serial=LT-0012&variant=la-2&o.door-latch=pull&o.power=");
    assertThat(result).hasStatusOk();
    assertThat(result)
        .hasHeader(
            "HX-Replace-Url", "/inspect?serial=LT-0012&variant=la-2&year=1957&o=door-latch:pull");
    Document part = page(result);
    assertThat(part.select("main, header")).isEmpty();
    assertThat(part.select("#answer .verdict").text()).isEqualTo("It matches its papers");
    assertThat(part.select("#verdict-bar").attr("hx-swap-oob")).isEqualTo("true");
    assertThat(part.select("#found-door-latch .mark").text()).isEqualTo("as built");
    assertThat(part.select("#found-power").text()).isEmpty();
    assertThat(part.select("#found-power").attr("hx-swap-oob")).isEqualTo("true");
  }

  @Test
  void printsAReportWithBlankLinesForTheAnswers() {
    Document page = ok("/inspect/report?variant=la-2a&year=1958&o=door-latch:pull");
    assertThat(page.select(".asked li")).hasSize(1);
    assertThat(page.select(".asked .blank")).hasSize(2);
    assertThat(page.select("main").text()).contains("revision 12 of the catalogue");
    assertThat(page.select("main").text())
        .contains("http://localhost/inspect?variant=la-2a&year=1958&o=door-latch:pull&rev=12");
  }

  @Test
  void makesAPdfOfTheReport() throws Exception {
    MvcTestResult result =
        get("/inspect/report.pdf?variant=la-2a&year=1958&o=door-latch:pull&paper=letter");
    assertThat(result).hasStatusOk().hasContentType("application/pdf");
    try (PDDocument pdf = Loader.loadPDF(result.getResponse().getContentAsByteArray())) {
      assertThat(pdf.getPage(0).getMediaBox().getWidth()).isBetween(611f, 613f);
      assertThat(pdf.getNumberOfPages()).isLessThanOrEqualTo(2);
      String text = new PDFTextStripper().getText(pdf);
      assertThat(text)
          .contains("LA-2A 1958", "Check its identity", "Questions for the logbooks")
          .contains("not approved data", "revision 12");
    }
  }

  @Test
  void aReportOfNoClaimLeadsToTheForm() {
    assertThat(get("/inspect/report?serial=ZZ-1")).hasRedirectedUrl("/inspect?serial=ZZ-1");
    assertThat(get("/inspect/report.pdf")).hasRedirectedUrl("/inspect");
    assertThat(get("/inspect/findings")).hasRedirectedUrl("/inspect");
  }

  @Test
  void staysAtTheRevisionThatTheAddressNames() {
    Document page = ok("/inspect?serial=LT-0012&rev=12");
    assertThat(page.select("form.inspecting [name=rev]").attr("value")).isEqualTo("12");
    assertThat(page.select("#answer a").eachAttr("href")).allMatch(h -> h.contains("rev=12"));
  }

  @Test
  void escapesWhateverIsTyped() {
    MvcTestResult result =
        get("/inspect?serial=LT-0012&o.power=%3Cscript%3E1%3C/script%3E&o=%3Cscript%3E:1");
    assertThat(result).hasStatus(400);
    assertThat(page(result).select("main script")).isEmpty();
  }

  private MvcTestResult get(String address) {
    return web.get().uri(URI.create(address.replace(" ", "%20"))).exchange();
  }

  private Document ok(String address) {
    MvcTestResult result = get(address);
    assertThat(result).hasStatusOk();
    return page(result);
  }

  private static Document page(MvcTestResult result) {
    return Jsoup.parse(
        new String(result.getResponse().getContentAsByteArray(), StandardCharsets.UTF_8), "");
  }
}
