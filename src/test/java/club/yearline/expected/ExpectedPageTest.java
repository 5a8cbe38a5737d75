package club.yearline.expected;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

class ExpectedPageTest extends ExpectedSlice {

  @Test
  void asksWhenOpenedWithoutAQuestion() {
    Document page = ok("/expected");
    assertThat(page.select("form.asking [name]").eachAttr("name"))
        .containsExactly("serial", "variant", "year");
    assertThat(page.select("#variant option").eachAttr("value"))
        .containsExactly("", "la-2b", "la-2c", "la-5");
    assertThat(page.select("[role=alert]")).isEmpty();
  }

  @Test
  void stampsThePositionLikeADataPlate() {
    Document page = ok("/expected?serial=lt 42");
    assertThat(page.title()).isEqualTo("LT-0042, Variant la-2b 1964 · Yearline");
    assertThat(page.select(".stamps dt").eachText())
        .containsExactly("Variant", "Model year", "Serial", "Family", "Serial block");
    assertThat(page.select(".stamps dd").eachText())
        .containsExactly(
            "Variant la-2b", "1964", "LT-0042", "Family turnstone", "LT-0001 to LT-0100");
  }

  @Test
  void groupsByChapterWithTitles() {
    Document page = ok("/expected?variant=la-2b&year=1964");
    assertThat(page.select(".group h2").eachText()).containsExactly("06 Other", "52 Doors");
    assertThat(page.select(".contents a").eachAttr("href")).containsExactly("#c-06", "#c-52");
  }

  @Test
  void groupsInTheOrderOfAWalkAroundWithABoxForEachValue() {
    Document page = ok("/expected?variant=la-2b&year=1966&order=walk");
    assertThat(page.select(".group h2").eachText())
        .containsExactly("1 From the ramp", "3 In the cabin", "5 In the papers");
    assertThat(entry(page, "door-latch").select(".offers .box")).hasSize(2);
    assertThat(page.select(".sheet.is-walk .remarks")).hasSize(5);
  }

  @Test
  void tellsASettledValue() {
    Element latch = entry(ok("/expected?variant=la-2b&year=1964"), "door-latch");
    assertThat(latch.select(".what .mark").text()).isEqualTo("settled");
    assertThat(latch.select(".offers b").eachText()).containsExactly("sliding bolt");
    assertThat(latch.select(".offers .mark").eachText()).containsExactly("standard");
  }

  @Test
  void tellsATransitionOldestFirstWithItsWindow() {
    Element latch = entry(ok("/expected?serial=LT-0250"), "door-latch");
    assertThat(latch.select(".what .mark").text()).isEqualTo("transition");
    assertThat(latch.select(".offers b").eachText())
        .containsExactly("sliding bolt", "rotary latch");
    assertThat(latch.select(".why").text())
        .isEqualTo("Old or new: from 1966 both left the factory; from 1967 all are new.");
    assertThat(latch.select("img").attr("src"))
        .isEqualTo("/pictures/" + "b".repeat(64) + "/latch.svg");
  }

  @Test
  void tellsATransitionOfWhichNobodyKnowsTheBeginning() {
    assertThat(entry(ok("/expected?serial=LT-0150"), "vent").select(".why").text())
        .isEqualTo("Old or new: nobody knows when the new one began; from 1966 all are new.");
  }

  @Test
  void tellsASplitAsStretchesOfSerials() {
    Element power = entry(ok("/expected?variant=la-2b&year=1965"), "power");
    assertThat(power.select(".what .mark").text()).isEqualTo("splits by serial");
    assertThat(power.select(".stretches th").eachText())
        .containsExactly("LT-0101 to LT-0149", "LT-0150 to LT-0200");
    assertThat(power.select(".stretches b").eachText()).containsExactly("145 hp", "160 hp");
  }

  @Test
  void tellsWhatIsOpenAndWhy() {
    Document page = ok("/expected?serial=LT-0505");
    Element latch = entry(page, "door-latch");
    assertThat(latch.select(".what .mark").text()).isEqualTo("open");
    assertThat(latch.select(".why").text()).contains("the year of this serial is not");
    assertThat(page.select("p.notice").text()).contains("Nobody has recorded the year of LT-0505");
    assertThat(page.select(".beside")).isEmpty();
  }

  @Test
  void saysNothingRecordedAsSuch() {
    Element radio = entry(ok("/expected?variant=la-2b&year=1964"), "radio");
    assertThat(radio.select(".what .mark").text()).isEqualTo("not recorded");
    assertThat(radio.select(".offers").text()).isEqualTo("nothing recorded");
  }

  @Test
  void marksOptionsWithTheirTakeRateAfterTheStandard() {
    Element paint = entry(ok("/expected?variant=la-2b&year=1964"), "paint");
    assertThat(paint.select(".offers b").eachText()).containsExactly("the plain", "the two-tone");
    assertThat(paint.select(".offers .mark").eachText())
        .containsExactly("standard", "option, about 25 %");
  }

  @Test
  void keepsEvidenceOneClickAwayWithBothSidesOfADispute() {
    Element proof = entry(ok("/expected?variant=la-2b&year=1964"), "paint").select(".proof").get(0);
    assertThat(proof.hasAttr("open")).isFalse();
    assertThat(proof.select("summary .mark").eachText())
        .containsExactly("Evidence: maker or authority", "disputed");
    assertThat(proof.select("li b").eachText()).containsExactly("For", "Against");
    assertThat(proof.select("li a").eachAttr("href"))
        .containsExactly("/changes/paint-start", "/sources/parts-book", "/sources/directive-9");
    assertThat(proof.text()).contains("Source parts-book, fig. 31").contains("from the first");
  }

  @Test
  void saysWhichRetrofitsFitAndWhichAreMandatory() {
    Element kits = entry(ok("/expected?serial=LT-0042"), "door-latch").select(".fittings").get(0);
    Element first = kits.child(0);
    Element second = kits.child(1);
    assertThat(first.text())
        .contains("rotary latch, Kit kit-latch", "mandatory", "recorded for this airframe")
        .contains("1964 to 1965");
    assertThat(second.text()).contains("not for this one (1967)").doesNotContain("mandatory");
    assertThat(kits.select(".box")).hasSize(1);
  }

  @Test
  void sumsUpTheStatesAndLeadsToThoseThatNeedALook() {
    Document page = ok("/expected?variant=la-2b&year=1965");
    assertThat(page.select(".tallies > li > .mark").eachText())
        .containsExactly("2 settled", "1 in transition", "1 splits by serial", "1 not recorded");
    assertThat(page.select(".tallies .jumps a").eachAttr("href"))
        .containsExactly("#f-vent", "#f-power", "#f-radio");
    page.select(".jumps a")
        .forEach(a -> assertThat(page.getElementById(a.attr("href").substring(1))).isNotNull());
  }

  @Test
  void tellsWhatDifferedTheYearBeforeAndAfter() {
    Document page = ok("/expected?variant=la-2b&year=1966");
    assertThat(page.select(".beside summary").eachText())
        .containsExactly(
            "In 1965, the year before, 3 things differed",
            "In 1967, the year after, 2 things differ");
    assertThat(page.select(".beside a").eachAttr("href"))
        .contains("/differences?from=la-2b:1966&to=la-2b:1965");
    assertThat(entry(page, "door-latch").select(".near").eachText())
        .containsExactly("1965: sliding bolt", "1967: rotary latch");
  }

  @Test
  void saysThatASerialLiesOutsideAllBlocks() {
    Document page = ok("/expected?serial=LT-0305&variant=la-2b&year=1966");
    assertThat(page.select(".stamps dd").eachText()).contains("outside all recorded blocks");
    assertThat(page.select("p.notice").text()).contains("LT-0305 lies in no recorded block");
  }

  @Test
  void carriesTheCautionAndTheRevision() {
    Document page = ok("/expected?variant=la-2b&year=1964");
    assertThat(page.select(".caution").text()).contains("not approved data");
    assertThat(page.select(".title-block").text()).contains("12");
  }

  @Test
  void linksToTheSameRevisionWhereOneIsAskedFor() {
    Document page = ok("/expected?variant=la-2b&year=1964&rev=12");
    List<String> links = page.select("main a[href^=/]").eachAttr("href");
    assertThat(links)
        .filteredOn(h -> !h.startsWith("/pictures/"))
        .isNotEmpty()
        .allMatch(h -> h.contains("rev=12"));
    assertThat(page.select("form.asking [name=rev]").attr("value")).isEqualTo("12");
  }

  @Test
  void escapesWhatMembersHaveWritten() {
    Document page = ok("/expected?variant=la-2b&year=1966");
    assertThat(page.select("main script")).isEmpty();
    assertThat(page.text()).contains("Two colours " + Turnstones.SCRIPT);
  }

  @Test
  void takesADesignationForAKey() {
    assertThat(ok("/expected?variant=VARIANT LA-2B&year=1964").select("h1").text())
        .isEqualTo("Variant la-2b 1964");
  }

  @Test
  void saysThatNothingWasAsked() {
    assertTrouble("/expected?serial=&variant=&year=", 400, "Nothing was asked", "serial");
  }

  @Test
  void offersTheYearsWhereTheYearIsMissing() {
    Document page = assertTrouble("/expected?variant=la-2b", 400, "A year is missing", "year");
    assertThat(page.select(".ways a").eachText())
        .containsExactly("1964", "1965", "1966", "1967", "1968");
  }

  @Test
  void asksForTheVariantOfAYear() {
    assertTrouble("/expected?year=1966", 400, "A variant is missing for 1966", "variant");
  }

  @Test
  void saysThatASerialIsOfNoSeries() {
    Document page =
        assertTrouble("/expected?serial=ZZ-9", 404, "“ZZ-9” is a serial of no", "serial");
    assertThat(page.select("#serial").attr("value")).isEqualTo("ZZ-9");
  }

  @Test
  void namesTheNearestBlocks() {
    Document page =
        assertTrouble("/expected?serial=LT-0305", 422, "No recorded block holds LT-0305", "serial");
    assertThat(page.select(".ways a").eachText())
        .containsExactly(
            "LT-0201 to LT-0300, Variant la-2b 1966: the nearest block below",
            "LT-0311 to LT-0400, Variant la-2b 1967: the nearest block above");
  }

  @Test
  void offersEachCandidateWithAllThreeFields() {
    Document page =
        assertTrouble("/expected?serial=LT-0460", 422, "may be more than one airframe", "serial");
    assertThat(page.select(".ways a").eachAttr("href"))
        .containsExactlyInAnyOrder(
            "/expected?serial=LT-0460&variant=la-2b&year=1968",
            "/expected?serial=LT-0460&variant=la-2c&year=1968");
    page.select(".ways a").forEach(a -> ok(a.attr("href")));
  }

  @Test
  void namesTheBlockThatContradicts() {
    Document page =
        assertTrouble(
            "/expected?serial=LT-0042&variant=la-2b&year=1966",
            422,
            "it lies in LT-0001 to LT-0100, Variant la-2b 1964",
            "serial");
    assertThat(page.select(".ways a").attr("href"))
        .isEqualTo("/expected?serial=LT-0042&variant=la-2b&year=1964");
    assertThat(page.select("#year").attr("value")).isEqualTo("1966");
    assertThat(page.select("#variant [selected]").attr("value")).isEqualTo("la-2b");
  }

  @Test
  void saysThatASerialIsOfAnotherVariantsSeries() {
    assertTrouble(
        "/expected?serial=LT-0305&variant=la-5", 422, "no serial of the Variant la-5", "serial");
  }

  @Test
  void namesTheRunsOutsideProduction() {
    Document page =
        assertTrouble(
            "/expected?variant=la-2b&year=1970",
            422,
            "not produced in 1970; it was produced in 1964 to 1968",
            "year");
    assertThat(page.select(".ways a").attr("href")).isEqualTo("/expected?variant=la-2b&year=1964");
  }

  @Test
  void saysThatATextIsTooLong() {
    assertTrouble("/expected?serial=" + "9".repeat(41), 400, "41 characters", "serial");
  }

  @Test
  void saysThatAVariantIsUnknown() {
    assertTrouble("/expected?variant=nope&year=1966", 404, "no variant “nope”", "variant");
  }

  @Test
  void saysThatAYearIsNoYear() {
    Document page =
        assertTrouble("/expected?variant=la-2b&year=sixty", 400, "“sixty” is not a year", "year");
    assertThat(page.select("#year").attr("value")).isEqualTo("sixty");
    assertThat(page.select("#year").attr("aria-describedby")).contains("year-fault");
  }

  @Test
  void keepsTheFormWhereARevisionIsUnknown() {
    Document page =
        assertTrouble("/expected?variant=la-2b&year=1966&rev=99", 404, "was never published", null);
    assertThat(page.select("#year").attr("value")).isEqualTo("1966");
  }

  @Test
  void escapesWhatTheAskerTyped() {
    MvcTestResult result = get("/expected?serial=%3Cscript%3Ealert(1)%3C/script%3E");
    assertThat(result).hasStatus(404);
    assertThat(page(result).select("main script")).isEmpty();
  }

  private static Element entry(Document page, String feature) {
    Element entry = page.getElementById("f-" + feature);
    assertThat(entry).as(feature).isNotNull();
    return entry;
  }

  private Document assertTrouble(String address, int status, String title, String field) {
    MvcTestResult result = get(address);
    assertThat(result).hasStatus(status);
    Document page = page(result);
    assertThat(page.select("[role=alert] h2").text()).contains(title);
    assertThat(page.select("[role=alert] p").text()).isNotBlank();
    assertThat(page.select("form.asking")).hasSize(1);
    if (field != null) {
      assertThat(page.select("#" + field).attr("aria-invalid")).isEqualTo("true");
    }
    return page;
  }
}
