package club.yearline.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.openqa.selenium.support.ui.ExpectedConditions.stalenessOf;

import club.yearline.testing.Browser;
import club.yearline.testing.DemoInBrowser;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A buyer's question: which of them carries three of us that far, and what do I give up? */
class BuyersQuestionTest extends DemoInBrowser {

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
  void isAnsweredInPlace() {
    answer();
    assertThat(page.findElements(By.cssSelector("script[src*='htmx']"))).hasSize(1);
  }

  @Test
  void isAnsweredWithoutScripts() {
    browser.scripts(false).open(at("/"));
    answer();
  }

  private void answer() {
    browser.press(By.linkText("Compare"));
    one("details.change-question[open]");
    fill("distance", "400");
    fill("people", "3");
    fill("weight", "510");
    fill("bags", "90");
    turn(() -> one("form.compare-ask button").click());
    assertThat(outcomes(".suits")).startsWith("can").contains("cannot", "cannot be told");
    add("LA-2D 1980 to 1982");
    add("LA-2 1956 to 1959");
    assertThat(one("h1").getText()).isEqualTo("LA-2D 1980 and LA-2 1956");
    assertThat(outcomes(".verdicts")).containsExactly("can", "cannot");
    assertThat(one(".verdicts").getText()).contains("above the baggage limit");
    String address = page.getCurrentUrl();
    assertThat(address).contains("v=la-2d:1980", "v=la-2:1956", "distance=400");
    turn(() -> page.findElement(By.linkText("metric")).click());
    assertThat(outcomes(".verdicts")).containsExactly("can", "cannot");
    assertThat(one(".plate").getText()).contains("740.8").doesNotContain("lb");
    one("details.sums > summary").click();
    assertThat(one("details.sums").getText())
        .contains("gross weight", "kg")
        .containsIgnoringCase("left over");
    browser.open(address);
    assertThat(outcomes(".verdicts")).containsExactly("can", "cannot");
  }

  private void add(String variant) {
    turn(() -> page.findElement(By.linkText(variant)).click());
  }

  private List<String> outcomes(String part) {
    return page.findElements(By.cssSelector(part + " .mark")).stream()
        .map(WebElement::getText)
        .toList();
  }

  private void fill(String field, String text) {
    page.findElement(By.name(field)).sendKeys(text);
  }

  /** In place or by a new page: what the page was about is another element afterwards. */
  private void turn(Runnable step) {
    WebElement before = one("#content");
    step.run();
    new WebDriverWait(page, Duration.ofSeconds(60)).until(stalenessOf(before));
    new WebDriverWait(page, Duration.ofSeconds(60))
        .until(p -> !p.findElements(By.cssSelector("#content, footer .title-block")).isEmpty());
  }

  private WebElement one(String selector) {
    return page.findElement(By.cssSelector(selector));
  }
}
