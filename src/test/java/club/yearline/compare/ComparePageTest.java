package club.yearline.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

class ComparePageTest extends CompareSlice {

  private static final String TWO = "/compare?v=la-2b:1964&v=la-2c:1968";
  private static final String TRIP = "&distance=250&people=3&weight=510&bags=60";

  @Test
  void asksWhichOnesAndForATrip() {
    Document page = ok("/compare");
    assertThat(page.select("form.compare-ask [name]").eachAttr("name"))
        .contains("variant", "year", "distance", "people", "weight", "bags", "reserve", "minutes")
        .contains("elevation", "temperature", "setting", "entered", "among");
    assertThat(page.select("details.change-question").hasAttr("open")).isTrue();
    assertThat(page.select("[role=alert], .caution, table")).isEmpty();
  }

  @Test
  void sendsTheFormToAnAddressThatHoldsAllAndStays() {
    MvcTestResult sent =
        get(
            "/compare?variant=la-2b&year=1964&variant=&year=&variant=Variant la-2c&year=1968"
                + "&distance= 250 &people=&reserve=day&entered=&units=metric&rev=12");
    assertThat(sent).hasStatus3xxRedirection();
    assertThat(sent.getResponse().getRedirectedUrl())
        .isEqualTo("/compare?v=la-2b:1964&v=la-2c:1968&units=metric&distance=250&rev=12");
  }

  @Test
  void layFiguresSideBySideAndMarksWhatDiffersByWord() {
    Document page = ok(TWO);
    assertThat(page.select("h1").text()).isEqualTo("Variant la-2b 1964 and Variant la-2c 1968");
    Element speed = row(page, "Figure cruise-speed");
    assertThat(speed.select("td").eachText()).containsExactly("100 kt", "115 kt+15");
    assertThat(speed.select(".how-it-stands").text()).isEqualTo("differs");
    assertThat(speed.hasClass("is-different")).isTrue();
    assertThat(row(page, "Figure wing-area").select(".how-it-stands").text()).isEqualTo("same");
    assertThat(page.select(".caution")).hasSize(1);
  }

  @Test
  void saysWhatIsMissingAndWhy() {
    Document page = ok(TWO);
    assertThat(cells(page, "Wing span"))
        .containsExactly("not a feature of this catalogue", "not a feature of this catalogue");
    assertThat(cells(page, "Figure stall-speed").get(0)).isEqualTo("not recorded for this variant");
    assertThat(cells(page, "Endurance"))
        .containsExactly("4.5 h", "no usable figure of fuel flow in cruise is recorded");
    assertThat(cells(page, "Useful load")).containsExactly("900 lb", "928 lb+28");
  }

  @Test
  void keepsFiguresTogetherThatChangedTogetherAtASerial() {
    Document page = ok("/compare?v=la-2b:1965&v=la-2b:1964");
    Element load = row(page, "Useful load");
    assertThat(load.select("td").get(0).text()).startsWith("900 to 930 lb");
    assertThat(load.select("td").get(0).select(".part").eachText())
        .containsExactly("LT-0101 to LT-0149: 900 lb", "LT-0150 to LT-0200: 930 lb");
  }

  @Test
  void showsATransitionAndAnOptionAsWhatTheyAre() {
    Document page = ok("/compare?v=la-2b:1966&v=la-2c:1968");
    assertThat(cells(page, "Figure usable-fuel").get(0)).isEqualTo("40 gal or 50 gal");
    assertThat(cells(page, "Figure seats").get(0)).isEqualTo("4 or 6 as an option");
    assertThat(cells(page, "Payload with full tanks").get(0)).isEqualTo("630 to 690 lb");
  }

  @Test
  void switchesUnitsByAnAddress() {
    Document page = ok(TWO + TRIP + "&units=metric");
    assertThat(cells(page, "Figure gross-weight")).containsExactly("1043 kg", "1066 kg+23");
    assertThat(page.select(".switch [aria-current]").text()).isEqualTo("metric");
    assertThat(page.select(".switch a").first().attr("href"))
        .isEqualTo("/compare?v=la-2b:1964&v=la-2c:1968&distance=250&people=3&weight=510&bags=60");
    assertThat(page.select(".plate").text()).contains("463 km", "231.3 kg");
  }

  @ParameterizedTest
  @ValueSource(strings = {"recorded", "metric", "imperial", "nonsense"})
  void noUnitChangesAVerdict(String units) {
    Document page =
        ok(
            "/compare?v=la-2b:1964&v=la-2b:1966&v=la-2c:1968&v=la-5:1961"
                + TRIP
                + "&units="
                + units);
    assertThat(page.select(".verdicts .mark").eachText())
        .containsExactly("can", "can", "cannot be told", "cannot");
  }

  @Test
  void judgesATripAndSaysByHowMuch() {
    Document page = ok("/compare?v=la-2b:1964&v=la-5:1961" + TRIP);
    Element can = page.select(".verdicts > li").get(0);
    assertThat(can.select(".reasons li").eachText())
        .containsExactly(
            "Needs 24 gal of fuel with the reserve; 16 gal more in full tanks.",
            "Leaves 186 lb of useful load over.",
            "The bags are within the limit, with 60 lb to spare.",
            "Seats left: 1 to 3.");
    Element cannot = page.select(".verdicts > li").get(1);
    assertThat(cannot.select(".reasons").text()).contains("89 lb too heavy");
    assertThat(page.select(".plate").text())
        .contains("250 nmi, 3 people of 510 lb together, bags of 60 lb, 30 min of reserve");
  }

  @Test
  void showsTheArithmeticLineByLine() {
    Document page = ok("/compare?v=la-2b:1964&v=la-2c:1968" + TRIP);
    Element sums = page.select("details.sums").get(0);
    assertThat(sums.text())
        .contains("gross weight 2300 lb − standard empty weight 1400 lb = 900 lb")
        .contains("fuel for the trip 24 gal × weight of fuel 6.0 lb/gal = 144 lb")
        .contains("payload for the trip 756 lb − people 510 lb − bags 60 lb = 186 lb");
    assertThat(page.select("details.sums").get(1).text())
        .contains("Endurance: no usable figure of fuel flow in cruise is recorded");
  }

  @Test
  void ranksWhatSuitsWithTheReason() {
    Document page = ok("/compare?distance=250&people=3&weight=510&bags=60");
    assertThat(page.select("h1").text()).isEqualTo("Compare");
    assertThat(page.select(".suits tbody th").eachText())
        .containsExactly(
            "Variant la-2b 1966",
            "Variant la-2b 1967",
            "Variant la-2b 1964",
            "Variant la-2b 1965",
            "Variant la-5 1961",
            "Variant la-2c 1968");
    assertThat(page.select(".suits tbody .mark").eachText())
        .containsExactly("can", "can", "can", "can", "cannot", "cannot be told");
    assertThat(page.select(".suits tbody tr").get(0).text())
        .contains("216 lb", "Needs 24 gal of fuel", "16 to 26 gal more");
    assertThat(page.select(".suits tbody tr").get(4).text()).contains("89 lb too heavy");
    assertThat(page.select(".suits tbody tr").get(5).text()).contains("fuel flow in cruise");
  }

  @Test
  void ranksAmongOneFamilyAndLeadsToTheComparison() {
    Document page = ok("/compare?v=la-2b:1964&distance=100&among=whimbrel&rev=12");
    assertThat(page.select(".suits tbody th").eachText()).containsExactly("Variant la-5 1961");
    assertThat(page.select(".suits tbody th a").attr("href"))
        .isEqualTo("/compare?v=la-2b:1964&v=la-5:1961&distance=100&among=whimbrel&rev=12");
    assertThat(page.select("main a").eachAttr("href"))
        .filteredOn(h -> h.startsWith("/"))
        .allMatch(h -> h.endsWith("rev=12"));
  }

  @Test
  void tellsTheAirAtTheFieldWithoutAnyTrip() {
    Document page = ok("/compare?elevation=2000&temperature=30");
    assertThat(page.select(".stamps dd").eachText()).containsExactly("2000 ft", "4160 ft");
    assertThat(page.select("ul.working").text()).contains("1013.25 hPa is taken", "11 degrees");
    assertThat(page.text()).contains("nothing is corrected here");
    assertThat(page.select(".caution")).hasSize(1);
    Document cold = ok("/compare?elevation=610&setting=1013.25&entered=metric&units=metric");
    assertThat(cold.select(".stamps dd").eachText()).containsExactly("610 m", "not known");
  }

  @Test
  void drawsBarsAndPointsWithTheirTables() {
    Document page = ok("/compare?v=la-2b:1964&v=la-5:1961&v=la-2c:1968");
    assertThat(page.select("svg[role=img]")).hasSizeGreaterThanOrEqualTo(5);
    assertThat(page.select("#bars-range-title").text()).isEqualTo("Still-air range");
    assertThat(page.select(".scatter .name").eachText()).containsExactly("A", "B");
    assertThat(page.select("details:has(.unseen) summary").eachText())
        .contains("The same as a table");
    page.select("svg[role=img]")
        .forEach(
            svg ->
                assertThat(svg.attr("aria-labelledby").split(" "))
                    .allMatch(id -> page.getElementById(id) != null));
  }

  @Test
  void leadsFromAFigureToItsSourceInOneStep() {
    Document page = ok(TWO);
    Element proof = row(page, "Figure power").select("th details.proof").first();
    assertThat(proof.select("summary").text()).isEqualTo("Evidence: maker or authority");
    assertThat(proof.select("a").eachAttr("href"))
        .contains("/features/power", "/changes/la-2b-power", "/sources/parts-book");
    assertThat(row(page, "Useful load").select("details")).isEmpty();
    assertThat(page.select("main script")).isEmpty();
  }

  @Test
  void readsAnOldRevisionThatLacksTheFeatures() {
    Document page = ok("/compare?v=la-2b:1964&v=la-2b:1965&rev=3" + TRIP);
    assertThat(page.select(".past")).hasSize(1);
    assertThat(cells(page, "Engine power")).containsOnly("not a feature of this catalogue");
    assertThat(page.select(".verdicts .mark").eachText()).containsOnly("cannot be told");
    assertThat(page.select("svg[role=img]")).isEmpty();
    assertThat(get("/compare?v=la-2b:1964&rev=99")).hasStatus(404);
  }

  @Test
  void takesOneForABeginning() {
    Document page = ok("/compare?v=la-2b:1964&v=la-2b:1964");
    assertThat(page.select(".notice").text()).contains("Add at least one more");
    assertThat(page.select("details.change-question").hasAttr("open")).isTrue();
    assertThat(page.select(".how-it-stands")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          v=nope:1966                | 404 | There is no variant “nope”
          v=la-2b:                   | 400 | A year is missing for the Variant la-2b
          v=la-2b                    | 400 | A year is missing for the Variant la-2b
          v=:1966                    | 400 | A variant is missing for 1966
          v=la-2b:66a                | 400 | “66a” is not a year
          v=la-2b:196612             | 400 | “196612” is not a year
          v=la-2b:1968               | 422 | The Variant la-2b was not produced in 1968; it was produced in 1964 to 1967
          v=la-7:1970                | 422 | No year of production is recorded for the LA-7
          """)
  void saysWhatIsWrongWithWhatWasChosen(String query, int status, String words) {
    MvcTestResult refused = get("/compare?" + query);
    assertThat(refused).hasStatus(status);
    assertThat(page(refused).select("[role=alert] h2").eachText()).containsExactly(words);
    assertThat(page(refused).select("form.compare-ask")).hasSize(1);
  }

  @Test
  void offersTheYearsThatMayBeMeantAndKeepsTheRest() {
    Document page = page(get("/compare?v=la-5:1961&v=la-2b:1999&distance=100"));
    assertThat(page.select(".ways a").first().attr("href"))
        .isEqualTo("/compare?v=la-5:1961&v=la-2b:1964&distance=100");
    assertThat(page.select("#variant2 [selected]").attr("value")).isEqualTo("la-2b");
    assertThat(page.select("#year2").attr("value")).isEqualTo("1999");
  }

  @Test
  void takesSixAtMost() {
    String six =
        "/compare?v=la-2b:1964&v=la-2b:1965&v=la-2b:1966&v=la-2b:1967&v=la-2c:1968&v=la-5:1961";
    assertThat(ok(six).select("table.figures").first().select("thead th")).hasSize(7);
    MvcTestResult seven = get(six + "&v=la-7:1970");
    assertThat(seven).hasStatus(400);
    assertThat(page(seven).select("[role=alert] h2").text()).startsWith("7 were chosen");
  }

  @Test
  void saysWhatIsWrongWithATripAndStillCompares() {
    MvcTestResult refused = get(TWO + "&distance=-5&people=2");
    assertThat(refused).hasStatus(400);
    Document page = page(refused);
    assertThat(page.select("[role=alert] li").eachText())
        .containsExactly(
            "−5 is out of reach here. Give a distance from 1 to 3000 nmi.",
            "Say what the people weigh together; the count alone tells no load.");
    assertThat(page.select("#distance").attr("aria-invalid")).isEqualTo("true");
    assertThat(page.select("table.figures")).hasSize(2);
    assertThat(page.select(".verdicts, .suits")).isEmpty();
  }

  @Test
  void escapesWhatWasTypedAndRecorded() {
    Document page = page(get("/compare?v=%3Cscript%3Ex:1&distance=%3Cscript%3Ey"));
    assertThat(page.select("main script")).isEmpty();
    assertThat(page.select("[role=alert]").text()).contains("<script>x", "<script>y");
    assertThat(ok("/compare?v=la-2b:1964&v=la-2b:1966").select("main script")).isEmpty();
  }

  private static Element row(Document page, String name) {
    return page.select("table.figures tbody tr").stream()
        .filter(r -> r.select("th > span").first().text().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new AssertionError(
                    "No row " + name + " in " + page.select("table.figures th").eachText()));
  }

  private static List<String> cells(Document page, String name) {
    return row(page, name).select("td").eachText();
  }
}
