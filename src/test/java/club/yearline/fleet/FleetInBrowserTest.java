package club.yearline.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.testing.Browser;
import club.yearline.testing.DemoInBrowser;
import club.yearline.testing.SignedIn;
import club.yearline.uploads.Shots;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

/** The register in a real browser: from a serial on a data plate to nothing left. */
class FleetInBrowserTest extends DemoInBrowser {

  @Autowired private ApplicationContext context;
  @TempDir private Path folder;
  private boolean looking;

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void aMemberRegistersLooksSharesAndDeletes(boolean scripts, Browser browser) throws Exception {
    Actor member = SignedIn.person(context, scripts ? "Frida Fleet" : "Fritz Fleet", Role.MEMBER);
    // Axe is a script itself.
    looking = scripts;
    browser.scripts(scripts).desktop();
    browser.open(at("/families")).driver().manage().deleteAllCookies();
    SignedIn.in(browser, at(""), member);
    browser.open(at("/fleet"));
    look(browser, "list");
    browser.open(at("/fleet?differing=yes"));
    look(browser, "list-differing");
    browser.press("a[href='/fleet/new']");
    look(browser, "new");
    type(browser, "serial", "LT-1300");
    browser.press("main form button");
    look(browser, "new-several");
    browser.driver().findElement(By.cssSelector("input[value='la-2d/1975/lt']")).click();
    type(browser, "registration", "qz-" + (scripts ? "abc" : "abd"));
    type(browser, "remarks", "In the east hangar.\nThe left door sticks.");
    browser.press("main form button");
    assertThat(text(browser, "h1")).startsWith("QZ-AB").endsWith("LT-1300");
    look(browser, "airframe-nothing-seen");
    String page = browser.driver().getCurrentUrl();

    browser.press("main .actions a.button");
    look(browser, "features");
    browser.press("a[href$='feature=door-latch']");
    look(browser, "observe");
    browser.driver().findElement(By.cssSelector("input[value='hook']")).click();
    type(browser, "note", "In rain.");
    byId(browser, "photographs").sendKeys(photograph().toString());
    browser.press("main form button");
    assertThat(browser.driver().findElements(By.cssSelector(".photographs img"))).hasSize(1);
    assertThat(text(browser, ".seen")).contains("differs").contains("In rain.");
    look(browser, "airframe");
    browser.press("form[action$='/share'] button");
    assertThat(text(browser, ".plate .label")).isEqualToIgnoringCase("yours, shared");

    browser.open(at("/find?q=" + (scripts ? "qzabc" : "qz-abd")));
    assertThat(browser.driver().getCurrentUrl()).isEqualTo(page);
    browser.press("#sharing a[href$='/delete']");
    look(browser, "delete");
    browser.press("main form button");
    browser.open(page);
    assertThat(text(browser, "main")).contains("There is no such airframe");
  }

  private Path photograph() throws Exception {
    byte[] shot = Shots.file(Shots.quarters(800, 600, BufferedImage.TYPE_INT_RGB), "jpg");
    return Files.write(folder.resolve("latch.jpg"), shot);
  }

  private static WebElement byId(Browser browser, String id) {
    return browser.driver().findElement(By.id(id));
  }

  private static void type(Browser browser, String field, String text) {
    byId(browser, field).clear();
    byId(browser, field).sendKeys(text);
  }

  private static String text(Browser browser, String selector) {
    return browser.driver().findElement(By.cssSelector(selector)).getText();
  }

  private void look(Browser browser, String name) {
    if (!looking) {
      return;
    }
    assertThat(browser.weight()).isLessThan(150_000);
    browser.desktop().light().assertAccessible().phone().dark().assertAccessible().light();
    if (Boolean.getBoolean("yearline.pictures")) {
      browser.record("fleet-" + name);
    }
    browser.size(320, 700);
    assertThat(browser.sidewaysScroll()).isZero();
    browser.desktop();
  }
}
