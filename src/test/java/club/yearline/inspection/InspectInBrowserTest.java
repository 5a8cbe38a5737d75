package club.yearline.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.accounts.ActingAs;
import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.testing.Browser;
import club.yearline.testing.DemoInBrowser;
import club.yearline.testing.SignedIn;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.Keys;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.WebDriverWait;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

/** An inspection on a telephone, from the serial on the data plate to the register. */
class InspectInBrowserTest extends DemoInBrowser {

  private static final String VERDICT = "Check its identity";

  @Autowired private ApplicationContext context;
  @Autowired private SavedInspections saved;

  private Browser browser;

  @BeforeEach
  void pickUpTheTelephone(Browser browser) {
    this.browser = browser.phone().light();
    browser.open(at("/robots.txt")).driver().manage().deleteAllCookies();
  }

  @AfterEach
  void layItDown() {
    browser.scripts(true).desktop();
  }

  @Test
  void withoutScriptsAnAirframeIsInspectedSavedAndOpenedAgain() {
    Actor member = SignedIn.person(context, "Nils Noscript", Role.MEMBER);
    browser.scripts(false).open(at("/inspect"));
    one("#serial").sendKeys("lt 412");
    browser.press("form.asking button");
    assertThat(text("h1")).isEqualTo("LT-0412, LA-2B 1966");
    one("#f-rear-window-wraparound").sendKeys(Keys.SPACE);
    one("#f-landing-light-nose-bowl").sendKeys(Keys.SPACE);
    browser.press("form.inspecting button.quiet[type=submit]");
    readFindings();

    browser.press("main a[href^='/sign-in?to=']");
    one("#email").sendKeys(ActingAs.email(member.name()));
    one("#password").sendKeys(SignedIn.PASSWORD);
    browser.press("main button[type=submit]");
    readFindings();
    browser.press("form.inspecting button.quiet[type=submit]");
    readFindings();
    browser.press("[data-save]");
    assertThat(browser.driver().getCurrentUrl()).contains("/inspect/saved/");
    assertThat(saved.of(member)).hasSize(1);

    browser.open(at("/inspect"));
    browser.press("a[href^='/inspect/saved/']");
    assertThat(text("h1")).isEqualTo("LT-0412, LA-2B 1966");
    assertThat(text("main .verdict")).isEqualTo(VERDICT);
    assertThat(text("main")).contains("Rear window", "Landing light");
  }

  @Test
  void withScriptsFindingAndVerdictChangeInPlace() {
    Actor member = SignedIn.person(context, "Signe Script", Role.MEMBER);
    SignedIn.in(browser.scripts(true), at(""), member);
    browser.open(at("/inspect?serial=LT-0412"));
    waitForText("html[data-keeping=on] #verdict-bar a", "Too little was seen");
    WebElement page = one("html");
    script("window.stayed = true");
    script("document.getElementById('f-rear-window-wraparound').click()");
    waitForText("#found-rear-window .mark", "differs");
    waitForText("#verdict-bar a", VERDICT);
    script(
        "document.getElementById('f-rear-window-wraparound').closest('fieldset')"
            + ".querySelector('[value=\"\"]').click()");
    waitForText("#verdict-bar a", "Too little was seen");
    assertThat(one("html")).isEqualTo(page);
    assertThat(script("return window.stayed")).isEqualTo(true);
  }

  @Test
  void aSavedInspectionIsFitForATelephoneAndForEverybody() {
    Actor member = SignedIn.person(context, "Saga Saved", Role.MEMBER);
    SignedIn.in(browser.scripts(true), at(""), member);
    browser.open(at("/inspect"));
    browser.open(at("/inspect?serial=LT-0412&o=rear-window:wraparound&o=landing-light:nose-bowl"));
    look("signed-in");
    browser.scripts(false).driver().navigate().refresh();
    browser.press("[data-save]");
    browser.scripts(true).driver().navigate().refresh();
    assertThat(text("main .verdict")).isEqualTo(VERDICT);
    look("saved");
    browser.open(at("/inspect"));
    assertThat(all("a[href^='/inspect/saved/']")).hasSize(1);
    look("mine");
  }

  private void readFindings() {
    assertThat(text("#found-rear-window .mark")).isEqualTo("differs");
    assertThat(text("#found-landing-light .mark")).isEqualTo("as built");
    assertThat(text("#answer .verdict")).isEqualTo(VERDICT);
    assertThat(text("#answer")).contains("Questions for the logbooks");
  }

  private void look(String name) {
    assertThat(browser.weight()).isLessThan(150_000);
    browser.desktop().light().assertAccessible().phone().dark().assertAccessible().light();
    if (Boolean.getBoolean("yearline.pictures")) {
      browser.record("inspect-" + name);
    }
    browser.size(320, 700);
    assertThat(browser.sidewaysScroll()).isZero();
    browser.phone();
  }

  private void waitForText(String selector, String text) {
    new WebDriverWait(browser.driver(), Duration.ofSeconds(30))
        .ignoring(StaleElementReferenceException.class)
        .until(d -> all(selector).stream().anyMatch(e -> e.getText().equals(text)));
  }

  private Object script(String script) {
    return ((JavascriptExecutor) browser.driver()).executeScript(script);
  }

  private WebElement one(String selector) {
    return browser.driver().findElement(By.cssSelector(selector));
  }

  private List<WebElement> all(String selector) {
    return browser.driver().findElements(By.cssSelector(selector));
  }

  private String text(String selector) {
    return one(selector).getText();
  }
}
