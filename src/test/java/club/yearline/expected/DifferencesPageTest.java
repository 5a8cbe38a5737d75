package club.yearline.expected;

import static org.assertj.core.api.Assertions.assertThat;

import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

class DifferencesPageTest extends ExpectedSlice {

  @Test
  void asksForTwoVariantYears() {
    Document page = ok("/differences");
    assertThat(page.select("form [name]").eachAttr("name"))
        .contains("fromVariant", "fromYear", "toVariant", "toYear");
    assertThat(page.select("[role=alert]")).isEmpty();
  }

  @Test
  void sendsTheFormToAnAddressThatStays() {
    MvcTestResult sent =
        get("/differences?fromVariant=la-2b&fromYear=1965&toVariant=Variant la-2b&toYear=1966");
    assertThat(sent).hasStatus3xxRedirection();
    assertThat(sent.getResponse().getRedirectedUrl())
        .isEqualTo("/differences?from=la-2b:1965&to=la-2b:1966");
  }

  @Test
  void tellsFirstWhatDiffersThenWhatIsTheSame() {
    Document page = ok("/differences?from=la-2b:1965&to=la-2b:1967");
    assertThat(page.select(".plate").text()).contains("4 things differ, 1 are the same");
    Element differing = page.select("table.pairs").get(0);
    assertThat(differing.select("tbody th").eachText())
        .containsExactly("06 Figure power", "52 Door latch", "52 Feature radio", "52 Feature vent");
    Element power = differing.select("tbody tr").get(0);
    assertThat(power.select("td").get(0).select(".lead").eachText())
        .containsExactly("LT-0101 to LT-0149", "LT-0150 to LT-0200");
    assertThat(power.select("td").get(1).select("b").eachText()).containsExactly("160 hp");
    assertThat(page.select("details.same tbody th").eachText()).containsExactly("52 Feature paint");
    assertThat(page.select("details.same").hasAttr("open")).isFalse();
    assertThat(page.select(".caution")).hasSize(1);
  }

  @Test
  void saysWhereAFeatureDoesNotBelongToAVariant() {
    Document page = ok("/differences?from=la-2b:1968&to=la-2c:1968");
    Element power = page.select("table.pairs tbody tr").get(0);
    assertThat(power.select("td").get(1).text())
        .isEqualTo("not recorded as a feature of the Variant la-2c");
  }

  @Test
  void leadsToEachSideAndTheOtherWayRound() {
    Document page = ok("/differences?from=la-2b:1965&to=la-2b:1967&rev=12");
    assertThat(page.select("main a").eachAttr("href"))
        .contains(
            "/expected?variant=la-2b&year=1965&rev=12",
            "/differences?from=la-2b:1967&to=la-2b:1965&rev=12",
            "/compare?v=la-2b:1965&v=la-2b:1967&rev=12")
        .filteredOn(h -> h.startsWith("/"))
        .allMatch(h -> h.endsWith("rev=12"));
    assertThat(page.select("main script")).isEmpty();
  }

  @Test
  void saysWhatIsWrongWithEachSide() {
    MvcTestResult refused = get("/differences?from=la-2b:sixty&to=la-2b:1970");
    assertThat(refused).hasStatus(400);
    Document page = page(refused);
    assertThat(page.select("[role=alert] h2").eachText())
        .containsExactly(
            "“sixty” is not a year",
            "The Variant la-2b was not produced in 1970; it was produced in 1964 to 1968");
    assertThat(page.select("#fromYear").attr("aria-invalid")).isEqualTo("true");
    assertThat(page.select("#toYear").attr("value")).isEqualTo("1970");
    assertThat(page.select(".ways a").attr("href"))
        .isEqualTo("/differences?from=la-2b:sixty&to=la-2b:1964");
  }

  @Test
  void saysThatAVariantIsUnknownOrASideIsMissing() {
    assertThat(get("/differences?from=nope:1966&to=la-2b:1966")).hasStatus(404);
    MvcTestResult half = get("/differences?from=la-2b:1966");
    assertThat(half).hasStatus(400);
    assertThat(page(half).select("[role=alert] h2").text()).isEqualTo("Nothing was asked");
    assertThat(page(half).select("#fromVariant [selected]").attr("value")).isEqualTo("la-2b");
  }
}
