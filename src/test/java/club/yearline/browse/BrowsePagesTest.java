package club.yearline.browse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.Mockito.when;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import club.yearline.accounts.SecurityConfiguration;
import club.yearline.catalog.Chapters;
import club.yearline.catalog.Contributor;
import club.yearline.catalog.Finder;
import club.yearline.catalog.Pictures;
import club.yearline.catalog.Revision;
import club.yearline.catalog.Snapshot;
import club.yearline.catalog.Snapshots;
import club.yearline.catalog.StoredPicture;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Catalogue;
import club.yearline.fleet.Register;
import club.yearline.testing.SmallCatalogue;
import club.yearline.web.Phrases;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.webmvc.test.autoconfigure.WebMvcTest;
import org.springframework.context.annotation.Import;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.context.bean.override.mockito.MockitoBean;
import org.springframework.test.web.servlet.MockMvc;

@WebMvcTest({
  HomePage.class,
  FindPage.class,
  FamilyPage.class,
  VariantPage.class,
  PictureFiles.class
})
@Import({
  SecurityConfiguration.class,
  Words.class,
  Wording.class,
  Phrases.class,
  Chapters.class,
  BrowseSections.class
})
class BrowsePagesTest {

  private static final Revision REVISION =
      new Revision(
          2,
          Instant.parse("2026-03-01T10:00:00Z"),
          "Adds the Whimbrel.",
          Contributor.named("a"),
          Contributor.named("b"));

  private static final Snapshot SMALL =
      new Snapshot(REVISION, Catalogue.of(SmallCatalogue.records()));

  @Autowired MockMvc mvc;
  @MockitoBean Snapshots snapshots;
  @MockitoBean Pictures pictures;
  @MockitoBean Register register;

  @BeforeEach
  void publish() {
    when(snapshots.head()).thenReturn(SMALL);
    when(snapshots.at(2)).thenReturn(SMALL);
    when(snapshots.revisions()).thenReturn(List.of(REVISION));
  }

  @Test
  void firstPageHasTheBoxTheFamiliesAndWhatChangedLately() throws Exception {
    Document page = page("/");
    assertThat(page.select("main form[action=/find] input[name=q]")).hasSize(1);
    assertThat(page.select(".card h3 a").eachAttr("href"))
        .containsExactly("/families/turnstone", "/families/whimbrel");
    assertThat(page.select(".card").first().text()).contains("2 variants, 1956 to 1960");
    assertThat(page.select(".card img").attr("src"))
        .isEqualTo("/pictures/" + "a".repeat(64) + "/side-la-2.svg");
    assertThat(page.select(".issues").text()).contains("2026-03-01", "Adds the Whimbrel.");
  }

  @Test
  void firstPageOfAnEmptyCatalogueSaysHowToFillIt() throws Exception {
    when(snapshots.head()).thenReturn(new Snapshot(Revision.NONE, Catalogue.EMPTY));
    Document page = page("/");
    assertThat(page.select("main code").eachText()).contains("java -jar yearline.jar import PATH");
    assertThat(page.select(".cards")).isEmpty();
    assertThat(page("/families").select(".empty")).hasSize(1);
    assertThat(page("/find?q=LA-2").select("h1").text()).contains("Nothing");
  }

  @ParameterizedTest
  @CsvSource({
    "LT-0012, /expected?serial=LT-0012",
    "la2a 60, /expected?variant=la-2a&year=1960",
    "LA-2, /variants/la-2",
    "rotary, /features/door-latch",
    "LA-MM-2, /sources/manual",
    "LA-5 whimbrel 1961, /expected?variant=la-5&year=1961",
  })
  void theBoxGoesStraightToTheAnswer(String typed, String address) throws Exception {
    MockHttpServletResponse response = find(typed);
    assertThat(response.getStatus()).isEqualTo(302);
    assertThat(response.getRedirectedUrl()).isEqualTo(address);
  }

  @Test
  void theBoxKeepsTheRevision() throws Exception {
    MockHttpServletResponse response =
        mvc.perform(get("/find").param("q", "LT 12").param("rev", "2")).andReturn().getResponse();
    assertThat(response.getRedirectedUrl()).isEqualTo("/expected?serial=LT-0012&rev=2");
    assertThat(page("/?rev=2").select("input[name=rev]").eachAttr("value"))
        .containsExactly("2", "2");
  }

  @Test
  void theBoxListsSeveralMeaningsByKind() throws Exception {
    Document page = Jsoup.parse(find("turnstone").getContentAsString());
    assertThat(page.select("main h2").eachText()).contains("Variants", "Families");
    assertThat(page.select(".rows a").eachAttr("href"))
        .contains("/variants/la-2", "/variants/la-2a", "/families/turnstone");
    assertThat(page.select("#ask").attr("value")).isEqualTo("turnstone");
  }

  @Test
  void theBoxSaysWhatItUnderstood() throws Exception {
    assertThat(text(find("LA-2A 1959"))).contains("Read with the year 1959", "1958, 1960");
    assertThat(text(find("door qqqqqq"))).contains("Left aside", "“qqqqqq”", "Door latch");
    assertThat(text(find("xyzzy"))).contains("Nothing in the catalogue is called “xyzzy”", "try");
    assertThat(text(find("1957"))).contains("LA-2, 1957", "outside all recorded blocks");
  }

  @Test
  void theBoxRefusesALongTextAndFillsItInAgain() throws Exception {
    String typed = "x".repeat(Finder.MAX_LENGTH + 1);
    MockHttpServletResponse response = find(typed);
    assertThat(response.getStatus()).isEqualTo(400);
    Document page = Jsoup.parse(response.getContentAsString());
    assertThat(page.select(".notice").text()).contains("101 characters", "100");
    assertThat(page.select("#ask").attr("value")).isEqualTo(typed);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "   "})
  void theEmptyBoxLeadsToTheFirstPage(String typed) throws Exception {
    assertThat(find(typed).getRedirectedUrl()).isEqualTo("/");
  }

  @Test
  void textsAreEscaped() throws Exception {
    assertThat(page("/variants/la-2").select("main script")).isEmpty();
    assertThat(page("/variants/la-2").select(".plate").text()).contains(SmallCatalogue.SCRIPT);
    Document found = Jsoup.parse(find(SmallCatalogue.SCRIPT).getContentAsString());
    assertThat(found.select("main script")).isEmpty();
    assertThat(found.select("#ask").attr("value")).isEqualTo(SmallCatalogue.SCRIPT);
  }

  @Test
  void aFamilyShowsItsProductionAsADrawingAndAsATable() throws Exception {
    Document page = page("/families/turnstone");
    assertThat(page.select("svg .bar a").eachAttr("href"))
        .containsExactly("/variants/la-2", "/variants/la-2a", "/variants/la-2a");
    assertThat(page.select("svg .link")).hasSize(1);
    assertThat(page.select("details table tbody tr").eachText())
        .containsExactly(
            "LA-2 Turnstone 1956 to 1957 20",
            "LA-2A Turnstone, Turnstone De Luxe 1958, 1960 developed from LA-2");
  }

  @Test
  void aFamilyListsItsFeaturesByChapterAndItsSeries() throws Exception {
    Document page = page("/families/turnstone");
    assertThat(page.select(".chapters h3").eachText())
        .containsExactly("33 Lights", "52 Doors", "72 Turbine/Turboprop engine");
    assertThat(page.select(".chapters li").eachText()).contains("Door latch 3 changes");
    assertThat(page.text()).contains("LT-0001 to LT-0060", "One count for all.");
    assertThat(page.text()).contains("Turnstone maintenance manual");
  }

  @ParameterizedTest
  @CsvSource({"/, 0", "/families, 0", "/families/turnstone, 0", "/variants/la-2, 0"})
  void onlyWhatIsMissingIsSaidToBeMissing(String path, int missing) throws Exception {
    assertThat(page(path).select(".empty")).hasSize(missing);
  }

  @Test
  void whatAVariantLacksIsSaidWithWhatItWouldTake() throws Exception {
    assertThat(page("/variants/la-5").select(".empty").eachText())
        .hasSize(2)
        .anyMatch(text -> text.startsWith("No neighbour is recorded."))
        .anyMatch(text -> text.startsWith("No source is recorded."));
  }

  @Test
  void aSourceIsListedOnceAndOnlyADisputedOneAsDisputed() throws Exception {
    Document page = page("/families/turnstone");
    assertThat(page.select("#sources + ul li").eachText())
        .containsExactly("Turnstone maintenance manual, 2-14 Maintenance manual");
  }

  @Test
  void aVariantSaysWhatChangedEachYearNewestFirst() throws Exception {
    Document page = page("/variants/la-2");
    assertThat(page.select(".year h3 a").eachText()).containsExactly("1957", "1956");
    assertThat(page.select(".year").first().select("li").eachText())
        .containsExactly(
            "Door latch pull handle LT-0011 to LT-0014: pull handle; LT-0015 to LT-0020: rotary"
                + " latch splits by serial Evidence: maker or authority",
            "Power 145 hp 160 hp Evidence: maker or authority");
  }

  @Test
  void aVariantMarksTransitionDisputeAndAGapInProduction() throws Exception {
    Document page = page("/variants/la-2a");
    assertThat(page.select(".year").first().text())
        .contains("Beside 1958", "in the left wing, or in the nose bowl", "transition", "disputed");
    assertThat(page.select("tr.is-gap").text()).isEqualTo("gap LT-0031 to LT-0040 10 in no block");
  }

  @Test
  void aVariantShowsNamesFiguresNeighboursAndSideView() throws Exception {
    Document page = page("/variants/la-2");
    assertThat(page.select(".facts").text())
        .contains("Power 160 hp", "145 hp (1956)", "Turnstone 1956 to 1957");
    assertThat(page.text()).contains("developed into LA-2A");
    assertThat(page.select("img.side-view").attr("alt")).isEqualTo("Side view of the LA-2");
    assertThat(page.select(".years a").eachAttr("href"))
        .containsExactly("/expected?variant=la-2&year=1956", "/expected?variant=la-2&year=1957");
    assertThat(page.select(".caution")).hasSize(1);
  }

  @Test
  void aYearlessBlockIsSaidAsSuch() throws Exception {
    assertThat(page("/variants/la-5").select("tbody tr").eachText())
        .anyMatch(row -> row.startsWith("not known 31 to 40 10"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"/families/turnstone", "/variants/la-2", "/families", "/"})
  void everyLinkIntoTheCatalogueKeepsTheRevision(String path) throws Exception {
    Document page = page(path + "?rev=2");
    assertThat(page.select("aside.past")).hasSize(1);
    assertThat(
            page.select("main a[href^=/]:not(.correct [rel=nofollow]), .crumbs a").eachAttr("href"))
        .filteredOn(href -> !href.startsWith("/revisions"))
        .isNotEmpty()
        .allMatch(href -> href.endsWith("rev=2"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"/families/none", "/variants/none", "/families?page=9"})
  void unknownKeysAreRefusedWithAdvice(String path) throws Exception {
    MockHttpServletResponse response = mvc.perform(get(path)).andReturn().getResponse();
    assertThat(response.getStatus()).isEqualTo(404);
    assertThat(text(response)).contains("What to do");
  }

  @Test
  void picturesStayForEverAndCannotRun() throws Exception {
    String sha = "a".repeat(64);
    byte[] svg = "<svg xmlns='http://www.w3.org/2000/svg'/>".getBytes(StandardCharsets.UTF_8);
    when(pictures.find(sha)).thenReturn(Optional.of(new StoredPicture("image/svg+xml", svg)));
    MockHttpServletResponse response =
        mvc.perform(get("/pictures/" + sha + "/side.svg")).andReturn().getResponse();
    assertThat(response.getContentAsByteArray()).isEqualTo(svg);
    assertThat(response.getContentType()).isEqualTo("image/svg+xml");
    assertThat(response.getHeader("Cache-Control")).contains("immutable", "max-age=31536000");
    assertThat(response.getHeaders("Content-Security-Policy"))
        .containsExactly("default-src 'none'; style-src 'unsafe-inline'; sandbox");
    assertThat(response.getHeader("X-Content-Type-Options")).isEqualTo("nosniff");
  }

  @Test
  void anUnknownPictureIsRefused() throws Exception {
    when(pictures.find("c".repeat(64))).thenReturn(Optional.empty());
    String path = "/pictures/" + "c".repeat(64) + "/x.svg";
    assertThat(mvc.perform(get(path)).andReturn().getResponse().getStatus()).isEqualTo(404);
    String nonsense = "/pictures/..%2fsecret/x.svg";
    assertThat(mvc.perform(get(nonsense)).andReturn().getResponse().getStatus())
        .isBetween(400, 404);
  }

  private Document page(String path) throws Exception {
    MockHttpServletResponse response = mvc.perform(get(path)).andReturn().getResponse();
    assertThat(response.getStatus()).isEqualTo(200);
    return Jsoup.parse(response.getContentAsString());
  }

  private MockHttpServletResponse find(String typed) throws Exception {
    return mvc.perform(get("/find").param("q", typed)).andReturn().getResponse();
  }

  private static String text(MockHttpServletResponse response) throws Exception {
    return Jsoup.parse(response.getContentAsString()).select("main").text();
  }
}
