package club.yearline.web;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.accounts.SecurityConfiguration;
import club.yearline.testing.Browser;
import club.yearline.testing.InBrowser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptExecutor;
import org.springframework.boot.autoconfigure.EnableAutoConfiguration;
import org.springframework.boot.flyway.autoconfigure.FlywayAutoConfiguration;
import org.springframework.boot.hibernate.autoconfigure.HibernateJpaAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.DataSourceAutoConfiguration;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** Every component on one page, in a real browser. */
@InBrowser
@SpringBootTest(
    classes = SamplePageTest.Sample.class,
    webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class SamplePageTest {

  private static final String SIDE_VIEW =
      "data:image/svg+xml,"
          + "%3Csvg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 200 80' fill='none' stroke='%23000'"
          + " stroke-width='1.5'%3E%3Cpath d='M14 40c8-9 24-12 44-13l14-11h34l12 11 58 9 10-20h8l-4 26c-40 10-110"
          + " 14-160 9-12-1-18-4-16-11zM62 16h56M50 52l-8 12M96 53l10 11M14 28v24'/%3E%3Ccircle"
          + " cx='41' cy='68' r='6'/%3E%3Ccircle cx='107' cy='68' r='7'/%3E%3C/svg%3E";

  @LocalServerPort int port;

  @Test
  void looksItsPartOnPhoneDesktopAndPaper(Browser browser) {
    browser.open(address()).record("sample");
    assertThat(browser.driver().getTitle()).isEqualTo("LA-2B 1966 · Yearline");
  }

  @Test
  void isAccessibleInBothThemesAndSizes(Browser browser) {
    browser.open(address()).desktop().light().assertAccessible();
    browser.phone().dark().assertAccessible();
    browser.light();
  }

  @ParameterizedTest
  @ValueSource(ints = {320, 390, 768, 1280})
  void doesNotScrollSideways(int width, Browser browser) {
    browser.size(width, 800).open(address());
    assertThat(browser.sidewaysScroll()).isZero();
    browser.desktop();
  }

  @Test
  void anAddressThatLeadsNowhereIsAnsweredByAPageOfOurs(Browser browser) {
    browser.open("http://localhost:" + port + "/no-such-page?year=1966").record("refusal");
    assertThat(browser.driver().getTitle())
        .isEqualTo("There is nothing at this address · Yearline");
    assertThat(browser.driver().findElement(By.cssSelector("footer")).getText())
        .contains("/no-such-page?year=1966");
    browser.assertAccessible();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/expected?q=%7Bx%7D%20%3Cb%3E%25%22%26&rev=11",
        "/expected/caf%C3%A9%20%22%7B1%7D?rev=11",
        "/gone/caf%C3%A9%20%22%7B1%7D?q=%7B%22"
      })
  void anAddressWithStrangeCharactersIsPrintedAsItWasAsked(String path) {
    HttpResponse<String> page = fetch(site() + path.substring(1));
    assertThat(page.statusCode()).isIn(200, 404);
    assertThat(Jsoup.parse(page.body()).selectFirst("html").attr("data-address"))
        .isEqualTo(site() + path.substring(1));
  }

  @Test
  void staticFilesAreKeptForAYearUnderTheHashOfTheirContent(Browser browser) {
    browser.open(address());
    String css =
        browser.driver().findElement(By.cssSelector("link[rel=stylesheet]")).getAttribute("href");
    assertThat(css).containsPattern("/css/yearline-[0-9a-f]{32}\\.css$");
    HttpResponse<String> file = fetch(css);
    assertThat(file.statusCode()).isEqualTo(200);
    assertThat(file.headers().firstValue("Cache-Control")).contains("max-age=31536000");
    String script = browser.driver().findElement(By.cssSelector("script")).getAttribute("src");
    assertThat(fetch(script).body()).contains("htmx");
  }

  @Test
  void nothingComesFromAnotherHostAndThePageIsSmall(Browser browser) {
    browser.open(address());
    List<?> loaded =
        (List<?>)
            ((JavascriptExecutor) browser.driver())
                .executeScript(
                    "return performance.getEntries().filter(e => e.name.startsWith('http'))"
                        + ".map(e => e.name)");
    assertThat(loaded).isNotEmpty().allMatch(n -> n.toString().startsWith(site()));
    Object bytes =
        ((JavascriptExecutor) browser.driver())
            .executeScript(
                "return performance.getEntries().filter(e => e.decodedBodySize)"
                    + ".reduce((sum, e) => sum + e.decodedBodySize, 0)");
    assertThat(((Number) bytes).longValue()).isBetween(20_000L, 150_000L);
  }

  private String site() {
    return "http://localhost:" + port + "/";
  }

  private static HttpResponse<String> fetch(String address) {
    try {
      return HttpClient.newHttpClient()
          .send(
              HttpRequest.newBuilder(URI.create(address)).build(),
              HttpResponse.BodyHandlers.ofString());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  private String address() {
    return "http://localhost:" + port + "/expected?variant=la-2b&year=1966&rev=11";
  }

  @EnableAutoConfiguration(
      exclude = {
        DataSourceAutoConfiguration.class,
        HibernateJpaAutoConfiguration.class,
        FlywayAutoConfiguration.class
      })
  @Import({
    SecurityConfiguration.class,
    SiteDialect.class,
    WebSetup.class,
    ErrorAdvice.class,
    ErrorPages.class,
    SampleController.class
  })
  static class Sample {

    @Bean
    Section first() {
      return new Section("/", "ask.go", 0);
    }

    @Bean
    Section expected() {
      return new Section("/expected", "site.revision", 10);
    }

    @Bean
    Section spot() {
      return new Section("/spot", "site.catalogue", 20);
    }
  }

  @Controller
  static class SampleController {

    @GetMapping({"/expected", "/expected/{name}"})
    String all(Model model) {
      model.addAttribute(
          "trail",
          List.of(
              new Crumb("Families", "/"),
              new Crumb("LA-2 Turnstone", "/families/turnstone"),
              Crumb.here("LA-2B 1966")));
      model.addAttribute("revision", 11);
      model.addAttribute("picture", SIDE_VIEW);
      model.addAttribute("faults", Map.of("year", "Year: the LA-2B was built from 1964 to 1967."));
      model.addAttribute(
          "choices", List.of(new Choice("la-2a", "LA-2A"), new Choice("la-2b", "LA-2B")));
      model.addAttribute("pages", new Pages("/expected?q=x", 5, 12));
      model.addAttribute("chart", chart());
      return "sample/all";
    }

    private static YearChart chart() {
      YearChart chart =
          new YearChart(
              "production",
              "Production of the Turnstone",
              "Years in which each variant was built.",
              1956,
              1988);
      var la2 =
          chart.row("LA-2").bar(1956, 1959, "settled", "LA-2, 1956 to 1959", "/variants/la-2");
      var la2a =
          chart
              .row("LA-2A")
              .bar(1960, 1963, "transition", "LA-2A, 1960 to 1963, transition", "/variants/la-2a")
              .bar(1966, 1968, "open", "open", null);
      var la2b =
          chart
              .row("LA-2B")
              .bar(1964, 1967, "splits", "LA-2B, 1964 to 1967", "/variants/la-2b")
              .bar(1968, 1971, "option", "option", null);
      var la2d =
          chart
              .row("LA-2D Amphibian")
              .bar(1982, 1988, "unrecorded", "LA-2D, not recorded", "/variants/la-2d");
      chart.link(la2, la2a, false);
      chart.link(la2a, la2b, false);
      chart.link(la2b, la2d, true);
      return chart;
    }
  }
}
