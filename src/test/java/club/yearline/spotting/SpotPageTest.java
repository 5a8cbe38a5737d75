package club.yearline.spotting;

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
import club.yearline.effectivity.Entry;
import club.yearline.testing.Sample;
import club.yearline.testing.SmallCatalogue;
import club.yearline.web.Phrases;
import java.io.UnsupportedEncodingException;
import java.net.URI;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
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

/** The page "what is this one" over the small catalogue at revision 12. */
@WebMvcTest(SpotController.class)
@Import({
  SecurityConfiguration.class,
  Phrases.class,
  Chapters.class,
  Wording.class,
  SpottingSections.class
})
class SpotPageTest {

  private static final String TURNSTONE = "/spot?family=turnstone&visibility=papers";

  @Autowired private MockMvcTester web;
  @MockitoBean private Snapshots snapshots;

  @BeforeEach
  void publishTheSmallCatalogue() {
    publish(Catalogue.of(SmallCatalogue.records()));
  }

  private void publish(Catalogue catalogue) {
    Snapshot snapshot =
        new Snapshot(
            new Revision(12, Instant.EPOCH, "note", Contributor.NOBODY, Contributor.NOBODY),
            catalogue);
    when(snapshots.head()).thenReturn(snapshot);
    when(snapshots.at(12)).thenReturn(snapshot);
  }

  @Test
  void beginsWithTheQuestionThatTellsMostAndTheAirframesBuilt() {
    Document page = ok(TURNSTONE);
    // 145 hp on 10 built in 1956, 160 hp on 10 in 1957; the 30 LA-2A tell nothing by it.
    assertThat(page.select("#question").text()).isIn("Door latch", "Landing light", "Power");
    assertThat(page.select(".spans > li .span-head").eachText())
        .containsExactly("LA-2 1956 to 1957 40 %", "LA-2A 1960 40 %", "LA-2A 1958 20 %");
    assertThat(page.select("#so-far")).isEmpty();
    assertThat(page.select(".caution")).hasSize(1);
    assertThat(page.select("title").text()).startsWith("What is this one?");
    assertThat(page.select("header nav [aria-current]").eachAttr("href")).containsExactly("/spot");
  }

  @Test
  void offersValuesAsLinksThatCarryAllThatWasTold() {
    Document page = ok(TURNSTONE + "&o=power:145.0&skip=landing-light&ask=door-latch");
    assertThat(page.select("#question").text()).isEqualTo("Door latch");
    assertThat(page.select(".taps b").eachText()).containsExactly("pull handle", "rotary latch");
    assertThat(page.select(".taps small").eachText())
        .containsExactly("A plain bow.", "A round knob.");
    assertThat(page.select(".taps img").eachAttr("src"))
        .containsExactly("/pictures/" + "b".repeat(64) + "/latch.svg");
    assertThat(page.select(".taps a").eachAttr("href"))
        .containsExactly(
            TURNSTONE + "&o=power:145&o=door-latch:pull&skip=landing-light",
            TURNSTONE + "&o=power:145&o=door-latch:rotary&skip=landing-light");
    assertThat(page.select(".spot-skip a").attr("href"))
        .isEqualTo(TURNSTONE + "&o=power:145&skip=landing-light&skip=door-latch");
    assertThat(page.select(".spot-answers li").eachText())
        .containsExactly(
            "Power 145 hp Change Remove", "Landing light could not tell Change Remove");
  }

  @Test
  void ranksByWhatWasSeenAndSaysWhatSpeaksForAndAgainst() {
    Document page = ok(TURNSTONE + "&o=power:145");
    // 10 x 0.995 against 10 x 0.005 and 30 x 0.5: a share of 0.398; the mean chance is 0.5.
    assertThat(page.select(".spans > li").first().text()).startsWith("LA-2A 1960 40 %");
    assertThat(page.select("#so-far").text()).startsWith("So far: LA-2A, 1960 (40 %)");
    Document both = ok(TURNSTONE + "&o=power:145&o=door-latch:pull");
    Element best = both.select(".spans > li").first();
    assertThat(best.text()).startsWith("LA-2 1956");
    assertThat(best.select(".is-for").text()).isEqualTo("speaks for it: Door latch (pull handle)");
    assertThat(both.select(".spans .is-counter").eachText())
        .contains("speaks against it: Door latch (pull handle)");
  }

  @Test
  void leadsOnwardWithWhatWasSeen() {
    Document page = ok(TURNSTONE + "&o=door-latch:pull&rev=12");
    assertThat(page.select(".span-years a[href^=/expected]").first().attr("href"))
        .isEqualTo("/expected?variant=la-2&year=1956&rev=12&o=door-latch:pull");
    assertThat(page.select(".span-years a[href^=/inspect]").first().attr("href"))
        .isEqualTo("/inspect?variant=la-2&year=1956&o=door-latch:pull&rev=12");
    assertThat(page.select(".past")).hasSize(1);
    assertThat(page.select(".taps a").eachAttr("href")).allMatch(h -> h.endsWith("&rev=12"));
  }

  @Test
  void asksForAFigureWithItsUnitAndTheNumbersOnRecord() {
    Document page = ok(TURNSTONE + "&ask=power");
    assertThat(page.select(".taps b").eachText()).containsExactly("145 hp", "160 hp");
    assertThat(page.select(".spot-number label").text()).isEqualTo("Another number: Number, in hp");
    assertThat(page.select(".spot-number [name=feature]").val()).isEqualTo("power");
  }

  @ParameterizedTest
  @CsvSource({"145, 145", "145.0, 145", "'145,5', 145.5", "' 160 ', 160", "-1, -1"})
  void takesATypedNumberToAnAddressThatStays(String typed, String number) {
    MvcTestResult result = get("/spot?family=turnstone&feature=power&value=" + typed);
    assertThat(result).hasStatus3xxRedirection();
    assertThat(result.getResponse().getRedirectedUrl())
        .isEqualTo("/spot?family=turnstone&o=power:" + number);
  }

  @Test
  void asksAgainWhereANumberCannotBeRead() {
    MvcTestResult result = get(TURNSTONE + "&feature=power&value=a lot");
    assertThat(result).hasStatus(400);
    Document page = page(result);
    assertThat(page.select("[role=alert]").text()).contains("“a lot” is no number; Power");
    assertThat(page.select("#question").text()).isEqualTo("Power");
    assertThat(page.select("#value").val()).isEqualTo("a lot");
  }

  @Test
  void forgetsAnAnswer() {
    MvcTestResult result = get("/spot?o=power:145&o=door-latch:pull&skip=landing-light&drop=power");
    assertThat(result.getResponse().getRedirectedUrl())
        .isEqualTo("/spot?o=door-latch:pull&skip=landing-light");
  }

  @Test
  void asksOnlyWhatIsSeenFromThere() {
    assertThat(ok("/spot?family=turnstone&visibility=ramp").select("#question")).isEmpty();
    assertThat(ok("/spot?family=turnstone&visibility=ramp").select("#onward").text())
        .contains("Step closer");
    assertThat(
            ok("/spot?family=turnstone&visibility=ramp")
                .select(".spot-question .ways a")
                .eachText())
        .containsExactly("Close by", "In the papers");
    assertThat(ok("/spot?family=turnstone").select(".places [aria-current]").text())
        .isEqualTo("Close by");
  }

  @Test
  void saysWhereNothingIsLeftToAsk() {
    Document page = ok(TURNSTONE + "&o=power:145&o=door-latch:pull&o=landing-light:wing");
    assertThat(page.select("#question")).isEmpty();
    assertThat(page.select(".spot-question").text())
        .contains("Nothing that is recorded would tell");
  }

  @Test
  void saysWhereNothingFits() {
    Document fits = ok(TURNSTONE + "&o=power:145&o=door-latch:rotary");
    assertThat(fits.select(".spot-ranking .notice")).isEmpty();
    Document page = ok(TURNSTONE + "&o=power:999");
    assertThat(page.select(".spot-ranking .notice").text())
        .contains("Nothing fits all of it", "exchanged later or misread: Power (999 hp)");
  }

  @Test
  void saysWhatDoesNotCountHere() {
    Document page = ok("/spot?family=whimbrel&visibility=papers&o=door-latch:pull");
    assertThat(page.select(".spot-answers li").text()).contains("does not count");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "o=nothing:x | There is no feature “nothing”.",
        "o=door-latch:velcro | “velcro” is no value of Door latch; known are: pull handle, rotary latch.",
        "o=power:strong | “strong” is no number; Power is a figure.",
        "o=door-latch | “door-latch” is not a feature and a value with a colon between.",
        "o=:pull | “:pull” is not a feature and a value",
        "o= | “” is not a feature and a value",
        "o=door-latch:pull&o=door-latch:rotary | Door latch was given twice",
        "o=door-latch:pull&o=door-latch:pull | Door latch was given twice",
        "skip=nothing | There is no feature “nothing”.",
        "ask=nothing | There is no feature “nothing”.",
        "family=nothing | There is no family “nothing”",
        "visibility=moon | “moon” is no place to stand",
        "feature=nothing&value=5 | There is no feature “nothing”.",
        "drop=door-latch&o=nothing:x | There is no feature “nothing”.",
        "o=%3Cscript%3E:x | There is no feature “<script>”.",
        "o=%00:%00 | There is no feature"
      })
  void usesWhatItCanAndSaysWhatItCannot(String query, String said) {
    MvcTestResult result = get("/spot?" + query);
    assertThat(result).hasStatus(400);
    Document page = page(result);
    assertThat(page.select("[role=alert]").text()).contains(said.strip());
    assertThat(page.select(".spans > li")).isNotEmpty();
    assertThat(page.select(".caution")).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "junk=1",
        "family=",
        "visibility=",
        "ask=",
        "drop=nothing",
        "feature=power",
        "skip=door-latch&skip=door-latch",
        "skip=door-latch&o=door-latch:pull"
      })
  void takesNoOffenceAtWhatMeansNothing(String query) {
    assertThat(get("/spot?" + query).getResponse().getStatus()).isIn(200, 302);
  }

  @Test
  void readsNoMoreThanAnybodySees() {
    String query =
        IntStream.range(0, 500)
            .mapToObj(i -> "o=f" + i + ":" + "v".repeat(100))
            .collect(Collectors.joining("&"));
    MvcTestResult result = get("/spot?" + query);
    assertThat(result).hasStatus(400);
    assertThat(page(result).select("[role=alert] li")).hasSize(9);
    assertThat(page(result).select("[role=alert] li").last().text()).isEqualTo("And 193 more.");
  }

  @Test
  void ranksNothingInAnEmptyCatalogue() {
    publish(Catalogue.EMPTY);
    Document page = ok("/spot");
    assertThat(page.select(".spot-ranking .empty").text()).contains("No variant");
    assertThat(page.select(".spot-question").text()).contains("Nothing is recorded");
  }

  @Test
  void letsAFamilyBeChosenFirstWhereThereAreMany() {
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i < 41; i++) {
      entries.add(Sample.family("family-" + i));
      entries.add(Sample.variant("v-" + i, "family-" + i, 1960, 1961));
    }
    publish(Catalogue.of(Sample.records(entries)));
    Document page = ok("/spot");
    assertThat(page.select("select[name=family] option")).hasSize(42);
    assertThat(page.select(".spot-ranking, .spot-question, .places")).isEmpty();
    assertThat(ok("/spot?family=").select(".spans > li")).hasSizeGreaterThan(5);
    assertThat(ok("/spot?family=family-3").select(".spans > li")).hasSize(1);
  }

  @Test
  void movesTheFocusOnlyWhereAPartIsSwapped() {
    assertThat(ok(TURNSTONE).select("[autofocus]")).isEmpty();
    MvcTestResult swapped =
        web.get().uri(URI.create(TURNSTONE)).header("HX-Request", "true").exchange();
    assertThat(page(swapped).select("[autofocus]").attr("id")).isEqualTo("question");
    assertThat(swapped.getResponse().getHeaders("Vary")).contains("HX-Request");
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
    try {
      return Jsoup.parse(result.getResponse().getContentAsString(), "");
    } catch (UnsupportedEncodingException e) {
      throw new IllegalStateException(e);
    }
  }
}
