package club.yearline.site;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.testing.Browser;
import club.yearline.testing.DemoInBrowser;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Every page in every state it can be in. With {@code -Dyearline.pictures=true} each is written to
 * {@code target/screenshots} too, to be looked at.
 */
class EveryPageTest extends DemoInBrowser {

  /** What a page may weigh as it travels, photographs apart. */
  private static final long HEAVIEST = 150_000;

  @ParameterizedTest(name = "{0}: {1}")
  @CsvFileSource(
      resources = "/browser/pages.csv",
      delimiterString = " | ",
      useHeadersInDisplayName = false,
      numLinesToSkip = 1)
  void isAccessibleFitsAPhoneAndIsLight(String state, String path, Browser browser) {
    browser.desktop().light().open(at(path));
    assertThat(browser.weight()).isBetween(2_000L, HEAVIEST);
    // Colours do not depend on the width, nor layout on the colours: two looks see all four.
    browser.assertAccessible().phone().dark().assertAccessible().light();
    browser.size(320, 700);
    assertThat(browser.sidewaysScroll()).isZero();
    if (Boolean.getBoolean("yearline.pictures")) {
      browser.record(state.replaceAll("[^a-z]+", "-"));
    }
  }
}
