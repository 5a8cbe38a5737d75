package club.yearline.site;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.testing.Browser;
import club.yearline.testing.DemoInBrowser;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** What people come for, from the first page to the end. */
class JourneysTest extends DemoInBrowser {

  /** More than any page of these journeys has stops before what is looked for. */
  private static final int STOPS = 60;

  private Browser browser;
  private WebDriver page;

  @BeforeEach
  void openTheFirstPage(Browser browser) {
    this.browser = browser;
    page = browser.phone().light().open(at("/")).driver();
  }

  @AfterEach
  void leaveTheBrowserAsItWas() {
    browser.scripts(true).desktop();
  }

  @Test
  void aVisitorReadsWhatASerialShouldHaveOnWhatEvidenceAndComesBack() {
    ask("lt 412");
    assertThat(heading()).isEqualTo("LT-0412, LA-2B 1966");
    WebElement latch = one("#f-door-latch");
    assertThat(latch.getText()).contains("transition", "hook handle", "rotary handle", "Evidence:");
    WebElement bulletin = latch.findElement(By.cssSelector("a[href='/sources/bulletin-52-03']"));
    assertThat(bulletin.isDisplayed()).isFalse();
    latch.findElement(By.tagName("summary")).click();
    browser.turn(bulletin::click);
    assertThat(heading()).isEqualTo("Rotary door latch");
    assertThat(one("main").getText()).contains("SB 52-03", "Door latch: Rotary handle");
    browser.turn(page.navigate()::back);
    assertThat(heading()).isEqualTo("LT-0412, LA-2B 1966");
  }

  @Test
  void sloppyAndAmbiguousTextsLeadToTheirAnswers() {
    ask("La 2b,66");
    assertThat(heading()).isEqualTo("LA-2B 1966");
    ask("turnston 1966");
    assertThat(heading()).isEqualTo("What may “turnston 1966” mean?");
    follow("LA-2B, 1966");
    assertThat(heading()).isEqualTo("LA-2B 1966");
    ask("lt1300");
    browser.turn(() -> page.findElement(By.xpath("//li[contains(., 'LA-2D, 1975')]/a")).click());
    assertThat(heading()).isEqualTo("LT-1300, LA-2D 1975");
    assertThat(one(".stamps").getText()).contains("LT-1255");
    ask("LT-0707");
    assertThat(one("main").getText()).contains("LT-0705", "LT-0710");
  }

  @Test
  void twoYearsAreComparedAndAnOldRevisionIsReadAsItWas() {
    follow("Differences");
    choose("fromVariant", "LA-2B", "fromYear", "1966");
    choose("toVariant", "LA-2B", "toYear", "1967");
    browser.turn(() -> one("main form button").click());
    assertThat(heading()).isEqualTo("LA-2B 1966 and LA-2B 1967");
    assertThat(one(".pairs").getText()).contains("Fin", "LT-0501 to LT-0502");
    follow("Revisions");
    follow("Revision 1");
    follow("Read the catalogue at this revision");
    assertThat(one(".past").getText()).contains("revision 1 as it was published");
    ask("LT-0501");
    assertThat(one("#f-fin-shape .items").getText()).contains("swept");
    follow("Read the newest");
    assertThat(page.findElements(By.className("past"))).isEmpty();
    assertThat(one("#f-fin-shape .items").getText()).contains("straight");
  }

  @Test
  void theKeyboardAloneIsEnough() {
    press(Keys.TAB);
    assertThat(focused().getText()).isEqualTo("Skip to the content");
    press(Keys.ENTER);
    tabTo("#ask");
    browser.turn(() -> focused().sendKeys("LT-0412", Keys.ENTER));
    assertThat(heading()).isEqualTo("LT-0412, LA-2B 1966");
    tabTo("#f-cruise-speed summary");
    press(Keys.ENTER);
    tabTo("#f-cruise-speed a[href^='/changes/']");
    browser.turn(() -> press(Keys.ENTER));
    assertThat(one(".plate .label").getText()).isEqualToIgnoringCase("Change");
    tabTo("main a[href^='/sources/']");
    browser.turn(() -> press(Keys.ENTER));
    assertThat(page.getCurrentUrl()).contains("/sources/");
  }

  @Test
  void withoutScriptsEveryStepIsTheSame() {
    browser.scripts(false).open(at("/"));
    ask("door latch");
    assertThat(heading()).contains("Door latch");
    one("main details:not(.print-open) > summary").click();
    assertThat(one("main details table").isDisplayed()).isTrue();
    browser.turn(() -> one("main details table td a[href^='/expected']").click());
    assertThat(one(".label").getText()).isEqualToIgnoringCase("Expected configuration");
  }

  /** Does what leads to another page, and comes back when that is there. */
  private void ask(String text) {
    WebElement box =
        page.findElements(By.name("q")).stream().filter(WebElement::isDisplayed).findFirst().get();
    box.clear();
    box.sendKeys(text);
    browser.turn(() -> box.findElement(By.xpath("../button")).click());
  }

  private void follow(String link) {
    browser.turn(() -> page.findElement(By.linkText(link)).click());
  }

  private void choose(String menu, String variant, String field, String year) {
    new Select(page.findElement(By.name(menu))).selectByVisibleText(variant);
    page.findElement(By.name(field)).sendKeys(year);
  }

  /** Presses the tab key until a place has the focus, which must show at every stop. */
  private void tabTo(String place) {
    for (int i = 0; i < STOPS; i++) {
      press(Keys.TAB);
      assertThat(focused().getCssValue("outline-style")).isNotEqualTo("none");
      if (page.findElements(By.cssSelector(place)).contains(focused())) {
        return;
      }
    }
    throw new AssertionError("The tab key never comes to " + place);
  }

  private void press(Keys key) {
    focused().sendKeys(key);
  }

  private WebElement focused() {
    return page.switchTo().activeElement();
  }

  private String heading() {
    return one("h1").getText();
  }

  private WebElement one(String selector) {
    return page.findElement(By.cssSelector(selector));
  }
}
