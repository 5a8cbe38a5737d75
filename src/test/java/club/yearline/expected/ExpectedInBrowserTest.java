package club.yearline.expected;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.testing.Browser;
import club.yearline.testing.InBrowser;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;

/** The pages over the demo catalogue, in a real browser. */
@InBrowser
@SpringBootTest(
    webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
    properties = {
      "spring.datasource.url=jdbc:h2:mem:expected;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;"
          + "DEFAULT_NULL_ORDERING=HIGH",
      "yearline.demo=true"
    })
class ExpectedInBrowserTest {

  @LocalServerPort int port;

  @ParameterizedTest
  @CsvSource({
    "asked, /expected",
    "transition, /expected?serial=LT-0412",
    "splits, /expected?variant=la-2c&year=1974",
    "open, /expected?serial=D-025",
    "walk, /expected?variant=la-2b&year=1966&order=walk",
    "outside, /expected?variant=la-2b&year=1999",
    "several, /expected?serial=LT-1300",
    "list, '/expected/list?serials=LT-0412,LT-0583,lt412,ZZ-1,LT-1300&feature=engine'",
    "differences, /differences?from=la-2b:1966&to=la-2c:1972",
    "differences-asked, /differences",
  })
  void readsWellOnPhoneDesktopAndPaper(String name, String path, Browser browser) {
    browser.open("http://localhost:" + port + path).record("expected-" + name);
    browser.desktop().light().assertAccessible();
    browser.dark().assertAccessible();
    browser.phone().light().assertAccessible();
    assertThat(browser.sidewaysScroll()).isZero();
    browser.size(320, 700);
    assertThat(browser.sidewaysScroll()).isZero();
    browser.desktop();
  }
}
