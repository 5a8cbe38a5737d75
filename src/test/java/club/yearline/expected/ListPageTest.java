package club.yearline.expected;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

class ListPageTest extends ExpectedSlice {

  @Test
  void asksForSerials() {
    Document page = ok("/expected/list");
    assertThat(page.select("textarea[name=serials]")).hasSize(1);
    assertThat(page.select("table")).isEmpty();
  }

  @Test
  void givesARowToEachSerialHoweverTheyAreParted() {
    Document page = ok("/expected/list?serials=lt 42%0D%0ALT-0250, LT-505;ZZ-9%0ALT-0305");
    assertThat(page.select("tbody th").eachText())
        .containsExactly("LT-0042", "LT-0250", "LT-0505", "ZZ-9", "LT-0305");
    assertThat(page.select("tbody tr").get(0).select("td").eachText())
        .containsExactly("1", "Variant la-2b", "1964", "LT-0001 to LT-0100");
    assertThat(page.select("tbody tr").get(2).select("td").eachText())
        .containsExactly("3", "Variant la-2b", "not recorded", "LT-0501 to LT-0510");
    assertThat(page.select("td.problem").eachText())
        .containsExactly(
            "“ZZ-9” is a serial of no recorded series", "No recorded block holds LT-0305");
    assertThat(page.select("tbody th a").get(0).attr("href"))
        .isEqualTo("/expected?serial=LT-0042&variant=la-2b&year=1964");
    assertThat(page.select("main > p").text()).contains("5 serials; 2 without an answer");
    assertThat(page.select(".caution")).hasSize(1);
  }

  @Test
  void marksSerialsThatRepeat() {
    Document page = ok("/expected/list?serials=LT-0042,ZZ-9,lt42,zz-9");
    assertThat(page.select(".repeats").eachText())
        .containsExactly("repeats row 1", "repeats row 2");
  }

  @Test
  void addsColumnsForTheChosenFeatures() {
    Document page =
        ok("/expected/list?serials=LT-0042,LT-0250,LT-0460&feature=door-latch&feature=power");
    assertThat(page.select("thead th").eachText()).endsWith("Door latch", "Figure power");
    assertThat(page.select("tbody tr").get(0).select("td").eachText())
        .endsWith("sliding bolt", "145 hp");
    assertThat(page.select("tbody tr").get(1).select("td").eachText())
        .endsWith("sliding bolt, or rotary latch (transition)", "160 hp");
    assertThat(page.select(".picks [checked]").eachAttr("value"))
        .containsExactly("power", "door-latch");
  }

  @Test
  void answersFiveHundredAndNoMore() {
    assertThat(ok("/expected/list?serials=" + serials(500)).select("tbody tr")).hasSize(500);
    MvcTestResult refused = get("/expected/list?serials=" + serials(501));
    assertThat(refused).hasStatus(400);
    assertThat(page(refused).select("#serials-fault").text()).contains("501", "500");
    assertThat(page(refused).select("table")).isEmpty();
  }

  @Test
  void saysThatNoSerialWasGiven() {
    MvcTestResult refused = get("/expected/list?serials=%20,%0A");
    assertThat(refused).hasStatus(400);
    assertThat(page(refused).select("#serials-fault").text()).contains("No serial was given");
  }

  @Test
  void keepsTheRevisionAndEscapesWhatWasTyped() {
    Document page = ok("/expected/list?rev=12&serials=LT-0042,%3Cscript%3E");
    assertThat(page.select("tbody th a").eachAttr("href")).allMatch(h -> h.endsWith("&rev=12"));
    assertThat(page.select("main script")).isEmpty();
  }

  private static String serials(int count) {
    return IntStream.rangeClosed(1, count)
        .mapToObj(n -> "LT-" + n)
        .collect(Collectors.joining(","));
  }
}
