package club.yearline.spotting;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.testing.Browser;
import club.yearline.testing.DemoInBrowser;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.WebDriverWait;

/** Somebody beside an airframe, with a phone. */
class SpotInBrowserTest extends DemoInBrowser {

  private static final int LEAST_TARGET = 44;

  private Browser browser;
  private WebDriver page;

  @BeforeEach
  void takeThePhone(Browser browser) {
    this.browser = browser;
    page = browser.phone().light().driver();
  }

  @AfterEach
  void leaveTheBrowserAsItWas() {
    browser.scripts(true).desktop();
  }

  @Test
  void tapsAnswersThatAreSwappedInPlaceAndGoesBack() {
    browser.open(at("/spot?family=turnstone"));
    WebElement frame = one("html");
    String first = question();
    swap(() -> one(".taps a").click());
    assertThat(one("html")).as("the page itself stays").isEqualTo(frame);
    assertThat(page.getCurrentUrl()).contains("o=");
    assertThat(question()).isNotEqualTo(first);
    assertThat(page.switchTo().activeElement().getAttribute("id")).isEqualTo("question");
    assertThat(one("#so-far").getText()).contains("So far");
    assertThat(one(".spot-answers").getText()).contains(first);
    String second = question();
    swap(() -> one(".spot-skip a").click());
    assertThat(page.getCurrentUrl()).contains("skip=");
    assertThat(question()).isNotIn(first, second);
    assertThat(one("html").getAttribute("data-address")).as("for print").contains("skip=");
    assertThat(one(".title-block").getText()).contains("skip=");
    swap(() -> page.navigate().back());
    assertThat(question()).isEqualTo(second);
    browser.open(page.getCurrentUrl());
    assertThat(question()).as("the address alone tells it all").isEqualTo(second);
    swap(() -> one(".given-steps button[name=drop]").click());
    assertThat(page.getCurrentUrl()).doesNotContain("o=", "drop=");
    assertThat(question()).isEqualTo(first);
    look("spot-first");
  }

  @Test
  void answersAFigureAndAnyQuestionOfAnyChapter() {
    browser.open(at("/spot?family=turnstone&visibility=papers"));
    one(".spot-all summary").click();
    swap(() -> one(".spot-all button[value=gross-weight]").click());
    assertThat(question()).isEqualTo("Gross weight");
    one("#value").sendKeys("much");
    swap(() -> one(".spot-number button").click());
    assertThat(one("[role=alert]").getText()).contains("much", "is no number");
    one("#value").clear();
    one("#value").sendKeys("2200");
    swap(() -> one(".spot-number button").click());
    assertThat(page.getCurrentUrl()).contains("o=gross-weight:2200").doesNotContain("value=");
    look("spot-figure");
    assertThat(one(".spot-answers").getText()).contains("Gross weight", "2200");
  }

  @Test
  void goesFromQuestionToQuestionWithoutScripts() {
    browser.scripts(false).open(at("/spot"));
    String first = question();
    browser.press(".taps a");
    assertThat(question()).isNotEqualTo(first);
    browser.press(".spot-skip a");
    browser.press(".spot-skip a");
    assertThat(page.findElements(By.cssSelector(".spot-answers li"))).hasSize(3);
    browser.press(".given-steps button[name=ask]");
    assertThat(question()).isEqualTo(first);
    assertThat(page.findElements(By.cssSelector(".taps .is-chosen"))).hasSize(1);
    browser.press(".taps li:last-child a");
    browser.press(By.linkText("In the cabin"));
    assertThat(one(".places [aria-current]").getText()).isEqualTo("In the cabin");
    one(".spans summary").click();
    browser.press(".span-years a[href^='/expected']");
    assertThat(one(".label").getText()).isEqualToIgnoringCase("Expected configuration");
  }

  @Test
  void everyAnswerIsWideEnoughForAThumb() {
    browser.open(at("/spot?family=turnstone"));
    List<WebElement> targets =
        page.findElements(By.cssSelector(".taps a, .places a, .spot-skip a, .spot-sides button"));
    assertThat(targets).hasSizeGreaterThan(6);
    assertThat(targets)
        .filteredOn(WebElement::isDisplayed)
        .allSatisfy(t -> assertThat(t.getSize().getHeight()).isGreaterThanOrEqualTo(LEAST_TARGET));
  }

  @Test
  void showsWhatNothingFits() {
    browser.open(
        at(
            "/spot?family=turnstone&o=fin-shape:straight&o=landing-light:wing-leading-edge"
                + "&o=gross-weight:2200&o=rear-window:wraparound&o=door-latch:hook"));
    assertThat(one(".spot-ranking .notice").getText()).contains("Nothing fits");
    look("spot-misfit");
    one(".spot-all summary").click();
    one(".spans summary").click();
    look("spot-open");
  }

  private void look(String name) {
    if (Boolean.getBoolean("yearline.pictures")) {
      browser.record(name);
      browser.phone();
    }
  }

  /** Does what swaps the part with the question, and waits until the new one is there. */
  private void swap(Runnable step) {
    WebElement before = one("#spot");
    step.run();
    new WebDriverWait(page, Duration.ofSeconds(60))
        .ignoring(WebDriverException.class)
        .until(
            p -> {
              List<WebElement> now = p.findElements(By.cssSelector("#spot:not(.htmx-request)"));
              return now.size() == 1
                  && !now.get(0).equals(before)
                  && p.findElements(By.cssSelector(".htmx-swapping, .htmx-settling")).isEmpty();
            });
  }

  private String question() {
    return one("#question").getText();
  }

  private WebElement one(String selector) {
    return page.findElement(By.cssSelector(selector));
  }
}
