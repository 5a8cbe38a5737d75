package club.yearline.citing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.BDDMockito.given;

import club.yearline.accounts.Addresses;
import club.yearline.accounts.SecurityConfiguration;
import club.yearline.catalog.Contributor;
import club.yearline.catalog.Revision;
import club.yearline.catalog.Snapshot;
import club.yearline.catalog.Snapshots;
import club.yearline.effectivity.Catalogue;
import club.yearline.testing.SmallCatalogue;
import club.yearline.web.Phrases;
import de.undercouch.citeproc.ris.RISParser;
import java.io.IOException;
import java.io.StringReader;
import java.io.UnsupportedEncodingException;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
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
import org.springframework.test.context.bean.override.mockito.MockitoBean;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** "Cite this" over the small catalogue at revision 3, published on 2 January 1970. */
@WebMvcTest(CiteController.class)
@Import({
  SecurityConfiguration.class,
  Works.class,
  Styles.class,
  PageTitles.class,
  Addresses.class,
  Phrases.class
})
class CitePagesTest {

  private static final Snapshot SNAPSHOT =
      new Snapshot(
          new Revision(
              3, Instant.ofEpochSecond(86_400), "note", Contributor.NOBODY, Contributor.NOBODY),
          Catalogue.of(SmallCatalogue.records()));

  @Autowired MockMvcTester web;
  @MockitoBean Snapshots snapshots;

  @BeforeEach
  void publish() {
    given(snapshots.head()).willReturn(SNAPSHOT);
    given(snapshots.at(3)).willReturn(SNAPSHOT);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          /                                        | Catalogue of model-year changes
          /families                                | Families
          /families/turnstone                      | LA-2 Turnstone
          /variants/la-2                           | LA-2 (LA-2 Turnstone)
          /features/door-latch                     | Door latch through the years
          /changes/latch-rotary                    | Door latch: Change latch-rotary
          /sources                                 | Sources
          /sources/manual                          | Turnstone maintenance manual: what rests on it
          /revisions/2                             | Changes of revision 2
          /revisions/compare?from=1&to=3           | Changes of revision 1–3
          /expected                                | Expected configurations
          /expected?serial=lt%2012                 | Expected configuration of LT-0012, LA-2, 1957
          /expected?variant=la-2&year=1956         | Expected configuration of LA-2, 1956
          /expected?variant=LA-2&year=1956&order=walk | Expected configuration of LA-2, 1956
          /differences?from=la-2:1956&to=la-2a:1960 | Differences between LA-2, 1956 and LA-2A, 1960
          /differences?from=la-2%3A1956&to=la-2a%3A1960 | Differences between LA-2, 1956 and LA-2A, 1960
          /compare?variant=la-2                    | Figures compared
          /spot                                    | Variants and years by what was seen
          /ground-school?f=door-latch              | Ground school
          """)
  void namesEachPageByItsRecords(String page, String title) {
    Document cite = ok(page);
    assertThat(cite.select("h1").text()).isEqualTo(title + ", revision 3");
    String link = page + (page.contains("?") ? "&" : "?") + "rev=3";
    assertThat(cite.select("#permalink").attr("href")).isEqualTo(link);
    assertThat(cite.select("#permalink").text()).isEqualTo("http://localhost" + link);
    assertThat(cite.select("#page-apa").text())
        .startsWith(title + ", revision 3. (1970, January 2). Yearline. http://localhost");
    assertThat(cite.select("#page-iso-690").text()).contains(title, link, "[Accessed ");
    assertThat(cite.select("#page-chicago").text()).contains("1970", link);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "https://elsewhere.example/",
        "//elsewhere.example/families",
        "/\\elsewhere.example",
        "/%2F/elsewhere.example",
        "javascript:alert(1)",
        "/families/<script>",
        "/families/turnstone#x",
        "/families/../admin/people",
        "/admin/people",
        "/account",
        "/api/v1/families",
        "/css/yearline.css",
        "/families/none",
        "/families/turnstone/none",
        "/sources/none",
        "/revisions/4",
        "/revisions/0",
        "/revisions/compare?from=1",
        "/expected?serial=NOPE",
        "/expected?variant=la-2&year=1999",
        "/expected?variant=la-2&year=x",
        "/differences?from=la-2:1956",
        "/differences?from=la-2&to=la-2a",
        "no slash",
      })
  void refusesWhatIsNoPageOfTheCatalogue(String page) {
    MvcTestResult result = get("/cite?rev=3&page=" + encoded(page));
    assertThat(result).hasStatus(404);
    Document refused = page(result);
    assertThat(refused.select("main").text())
        .contains("There is no such page to cite", "Cite this");
    assertThat(
            refused.select(
                "main script, main a[href*=elsewhere], a[href^=javascript], a[href^=https]"))
        .isEmpty();
    assertThat(get("/cite/file?rev=3&page=" + encoded(page))).hasStatus(404);
  }

  @Test
  void refusesAnAddressThatIsTooLong() {
    assertThat(get("/cite?page=" + encoded("/families/" + "x".repeat(2000)))).hasStatus(404);
  }

  @ParameterizedTest
  @CsvSource({
    "/cite, 400",
    "/cite?page=, 400",
    "/cite?page=/families&rev=x, 400",
    "/cite/file?page=/families&format=word, 400",
    "/cite/file?page=/families&of=everything, 400",
    "/cite/file?page=/families&of=source, 404",
  })
  void saysWhatIsWrongWithAQuestion(String address, int status) {
    MvcTestResult result = get(address);
    assertThat(result).hasStatus(status);
    assertThat(page(result).select("main").text()).contains("What to do");
  }

  /** A page that was opened at a revision is cited at that one, though the newest is another. */
  @Test
  void takesTheRevisionOutOfTheAddressOfThePage() {
    assertThat(get("/cite?page=" + encoded("/families?rev=2")))
        .hasStatus3xxRedirection()
        .hasRedirectedUrl("/cite?page=%2Ffamilies&rev=2");
    assertThat(ok("/families?rev=2").select("#permalink").attr("href"))
        .isEqualTo("/families?rev=3");
  }

  @Test
  void citesASourceItselfBesideItsPage() {
    Document cite = ok("/sources/manual");
    assertThat(cite.select("section h2").eachText())
        .containsExactly("The source itself", "The page");
    assertThat(cite.select("#source-apa").text())
        .isEqualTo(
            "Lindmark Aero. (1959). Turnstone maintenance manual (Maintenance Manual LA-MM-2).");
    assertThat(cite.select("#source-apa i").text()).isEqualTo("Turnstone maintenance manual");
  }

  @Test
  void offersEachFormatAsAFile() throws IOException {
    String base = "/cite/file?rev=3&of=source&page=" + encoded("/sources/manual") + "&format=";
    assertThat(get(base + "csl-json"))
        .hasHeader("Content-Disposition", "attachment; filename=\"manual.json\"")
        .hasHeader("Content-Type", "application/vnd.citationstyles.csl+json")
        .bodyText()
        .startsWith("[ {")
        .contains("\"literal\" : \"Lindmark Aero\"");
    assertThat(get(base + "bibtex"))
        .hasHeader("Content-Disposition", "attachment; filename=\"manual.bib\"")
        .bodyText()
        .startsWith("@manual{manual,");
    String page = "/cite/file?rev=3&format=ris&page=" + encoded("/expected?serial=LT-0012");
    String ris = get(page).getResponse().getContentAsString(StandardCharsets.UTF_8);
    assertThat(new RISParser().parse(new StringReader(ris)).getReferences())
        .singleElement()
        .satisfies(
            read -> {
              assertThat(read.getURL()).isEqualTo("http://localhost/expected?serial=LT-0012&rev=3");
              assertThat(read.getTitle())
                  .isEqualTo("Expected configuration of LT-0012, LA-2, 1957, revision 3");
            });
  }

  @Test
  void isAskedForAnewEachTime() {
    assertThat(get("/cite?page=/families&rev=3")).hasHeader("Cache-Control", "no-cache, private");
  }

  private MvcTestResult get(String address) {
    return web.get().uri(URI.create(address)).exchange();
  }

  private Document ok(String page) {
    MvcTestResult result = get("/cite?rev=3&page=" + encoded(page));
    assertThat(result).hasStatusOk();
    return page(result);
  }

  private static Document page(MvcTestResult result) {
    try {
      return Jsoup.parse(result.getResponse().getContentAsString(), "");
    } catch (UnsupportedEncodingException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
