package club.yearline.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.fleet.Register;
import club.yearline.testing.Browser;
import club.yearline.testing.DemoInBrowser;
import club.yearline.testing.Line;
import club.yearline.testing.SignedIn;
import club.yearline.uploads.Shots;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.function.Function;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.support.ui.WebDriverWait;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

/** A connection that is lost, and what is kept on the telephone until it is back. */
class OfflineInBrowserTest extends DemoInBrowser {

  private static final String CLAIM = "/inspect?serial=LT-0412&variant=la-2b&year=1966";

  @Autowired private ApplicationContext context;
  @Autowired private Register register;
  @Autowired private SavedInspections saved;

  private Line line;
  private Browser browser;
  private WebDriver page;

  @BeforeEach
  void pickUpTheTelephone(Browser browser) {
    this.line = new Line(URI.create(at("/")).getPort());
    this.browser = browser;
    this.page = browser.workers(true).phone().light().scripts(true).driver();
  }

  @AfterEach
  void layItDown() {
    line.close();
    browser.workers(false).desktop();
  }

  @Test
  void anExpectedConfigurationOpenedBeforeStaysReadableWithoutAConnection() {
    Actor member = SignedIn.person(context, "Nora Netless", Role.MEMBER);
    signIn(member);
    open("/expected?serial=LT-0412");
    waitForKept("yearline-pages", "/expected?serial=LT-0412");
    line.cut();
    open("/expected?serial=LT-0412");
    assertThat(text("h1")).isEqualTo("LT-0412, LA-2B 1966");
    assertThat(text(".is-kept")).contains("Kept on this phone", "evision 2");
    assertThat(page.getPageSource()).doesNotContain("Nora Netless").doesNotContain("_csrf");
    open("/families");
    assertThat(text("main")).contains("expected: LT-0412");
    line.join();
    open("/account");
    page.findElement(By.cssSelector("details.desk summary")).click();
    browser.press("details.desk form button");
    waitFor(d -> script("return caches.has('yearline-pages').then(kept => !kept)"));
  }

  @Test
  void aHalfDoneInspectionOutlivesTheConnectionAndTheTabAndIsSavedOnce(@TempDir Path folder)
      throws Exception {
    Actor member = SignedIn.person(context, "Ivo Inspects", Role.MEMBER);
    signIn(member);
    open(CLAIM);
    waitForKept("yearline-pages", CLAIM);
    waitForScript();
    line.cut();
    choose("f-rear-window-wraparound");
    page.findElement(By.id("f-power-n")).sendKeys("145");
    Path shot = Files.write(folder.resolve("window.jpg"), Shots.withPlace(6));
    page.findElement(By.name("photo.rear-window")).sendKeys(shot.toString());
    waitFor(d -> text("[data-photos='rear-window']").contains("1"));
    waitFor(d -> state().equals("kept"));

    String old = page.getWindowHandle();
    page.switchTo().newWindow(WindowType.TAB);
    String fresh = page.getWindowHandle();
    page.switchTo().window(old).close();
    page.switchTo().window(fresh);
    open(CLAIM);
    waitForScript();
    assertThat(page.findElement(By.id("f-rear-window-wraparound")).isSelected()).isTrue();
    assertThat(page.findElement(By.id("f-power-n")).getDomProperty("value")).isEqualTo("145");
    assertThat(text("[data-photos='rear-window']")).contains("1");
    page.findElement(By.cssSelector("[data-save]")).click();
    waitFor(d -> state().equals("waiting"));
    assertThat(saved.of(member)).isEmpty();

    line.join();
    script("window.dispatchEvent(new Event('online')); window.dispatchEvent(new Event('online'))");
    waitFor(d -> state().equals("saved"));
    assertThat(saved.of(member)).hasSize(1);
    SavedInspection one = saved.of(member).get(0);
    assertThat(one.seen()).containsExactlyInAnyOrder("rear-window:wraparound", "power:145");
    assertThat(register.own(member)).hasSize(1);
    page.findElement(By.cssSelector("#kept a")).click();
    waitFor(d -> d.getCurrentUrl().contains("/inspect/saved/"));
    assertThat(text("h1")).isEqualTo("LT-0412, LA-2B 1966");
    page.findElement(By.cssSelector("a[href^='/fleet/']")).click();
    waitFor(d -> d.getCurrentUrl().contains("/fleet/"));
    assertThat(page.findElements(By.cssSelector("main img[src*='/photographs/']"))).isNotEmpty();
    open(CLAIM);
    waitForScript();
    assertThat(page.findElement(By.id("f-rear-window-wraparound")).isSelected()).isFalse();
  }

  @Test
  void whoIsNoLongerSignedInIsToldAndLosesNothing() {
    Actor member = SignedIn.person(context, "Lena Lapsed", Role.MEMBER);
    signIn(member);
    open(CLAIM);
    waitForScript();
    choose("f-rear-window-wraparound");
    waitFor(d -> state().equals("kept"));
    page.manage().deleteAllCookies();
    page.findElement(By.cssSelector("[data-save]")).click();
    waitFor(d -> state().equals("signed-out"));
    assertThat(page.findElement(By.cssSelector("#kept a")).getDomAttribute("href"))
        .startsWith("/sign-in?to=");
    signIn(member);
    open(CLAIM);
    waitFor(d -> state().equals("saved"));
    assertThat(saved.of(member)).hasSize(1);
  }

  @Test
  void twoTabsOfOneInspectionKeepOneAndTheSame() {
    Actor member = SignedIn.person(context, "Tove Twotabs", Role.MEMBER);
    signIn(member);
    open(CLAIM);
    waitForScript();
    choose("f-rear-window-wraparound");
    waitFor(d -> state().equals("kept"));
    String first = page.getWindowHandle();
    page.switchTo().newWindow(WindowType.TAB);
    open(CLAIM);
    waitForScript();
    choose("f-landing-light-nose-bowl");
    page.switchTo().window(first);
    waitFor(d -> page.findElement(By.id("f-landing-light-nose-bowl")).isSelected());
    page.findElement(By.cssSelector("[data-save]")).click();
    waitFor(d -> state().equals("saved"));
    assertThat(saved.of(member)).hasSize(1);
    assertThat(saved.of(member).get(0).seen()).hasSize(2);
    for (String tab : page.getWindowHandles()) {
      if (!tab.equals(first)) {
        page.switchTo().window(tab).close();
      }
    }
    page.switchTo().window(first);
  }

  /** The browser is shared: whoever sat at it before leaves. */
  private void signIn(Actor member) {
    open("/robots.txt");
    page.manage().deleteAllCookies();
    SignedIn.in(browser, line.at(""), member);
  }

  private void open(String path) {
    browser.open(line.at(path));
  }

  private String state() {
    return String.valueOf(page.findElement(By.id("kept")).getDomAttribute("data-state"));
  }

  private String text(String selector) {
    return page.findElement(By.cssSelector(selector)).getText();
  }

  private void choose(String id) {
    script("document.getElementById('" + id + "').click()");
  }

  private void waitForScript() {
    waitFor(d -> script("return document.documentElement.dataset.keeping === 'on'"));
  }

  private void waitForKept(String cache, String path) {
    String address = line.at(path);
    waitFor(
        d ->
            script(
                "return caches.open('"
                    + cache
                    + "').then(c => c.match('"
                    + address
                    + "')).then(Boolean)"));
  }

  private boolean script(String script) {
    return Boolean.TRUE.equals(((JavascriptExecutor) page).executeScript(script));
  }

  private void waitFor(Function<WebDriver, Boolean> what) {
    new WebDriverWait(page, Duration.ofSeconds(30)).until(what);
  }
}
