package club.yearline.corrections;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.testing.Browser;
import club.yearline.testing.InBrowser;
import club.yearline.testing.SignedIn;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;

/** A wrong cut-in, from the member who noticed it to the next revision and back. */
@InBrowser
@SpringBootTest(
    webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
    properties = {
      "spring.datasource.url=jdbc:h2:mem:correction-journey;MODE=PostgreSQL;"
          + "DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH",
      "yearline.demo=true"
    })
class CorrectionJourneyTest {

  @LocalServerPort private int port;
  @Autowired private ApplicationContext context;

  private Browser browser;

  @Test
  void aMemberCorrectsACutInAndTheAnswersChange(Browser opened) throws IOException {
    browser = opened.desktop();
    Actor member = SignedIn.person(context, "Mette Member", Role.MEMBER);
    Actor moderator = SignedIn.person(context, "Mona Moderator", Role.MODERATOR);
    Actor second = SignedIn.person(context, "Sven Second", Role.MODERATOR);
    assertThat(latchOf("LT-0480")).contains("transition");

    as(member);
    go("/changes/door-latch-rotary");
    follow("Correct this");
    String form = browser.driver().getCurrentUrl();
    looksRight("correction-form");
    browser.driver().get(form);
    type("title", "Rotary latch: all have it from LT-0455 on");
    type(cutIn("series"), "lt");
    type(cutIn("first_serial"), "LT-0399");
    type(cutIn("settled_serial"), "LT-0455");
    press("Save");
    String correction = browser.driver().getCurrentUrl();
    follow("Title and sources");
    looksRight("correction-sources");
    type("ground.0.source", "bulletin-52-03");
    type("ground.0.locator", "p. 2");
    press("Save title and sources");
    attach(photograph("LT-0399, left door"));
    press("Hand it in");
    assertThat(text()).contains("waiting");

    as(moderator);
    go("/corrections");
    looksRight("correction-queue");
    follow("Rotary latch: all have it from LT-0455 on");
    assertThat(text()).contains("LA-2B").contains("Approve and publish");
    looksRight("correction-waiting");
    type("decision", "The photograph of LT-0455 shows the old one.");
    press("Send back");

    as(member);
    go("/inbox");
    assertThat(text()).contains("Rotary latch: all have it from LT-0455 on");
    browser.open(correction);
    assertThat(text()).contains("The photograph of LT-0455 shows the old one.");
    follow("Edit");
    type(cutIn("settled_serial"), "LT-0456");
    press("Save");
    press("Hand it in");

    as(second);
    browser.open(correction);
    press("Approve and publish");
    assertThat(text()).contains("It was published as revision 2");
    assertThat(latchOf("LT-0480")).doesNotContain("transition").contains("otary");
    go("/expected?serial=LT-0480&rev=1");
    assertThat(shown()).contains("transition");

    go("/feed");
    assertThat(browser.driver().getPageSource()).contains("Rotary latch: all have it");
    go("/revisions/2");
    follow("Take back this revision");
    press("Prepare the correction");
    press("Hand it in");
    String undo = browser.driver().getCurrentUrl();
    as(moderator);
    browser.open(undo);
    press("Approve and publish");
    assertThat(latchOf("LT-0480")).contains("transition");
  }

  private void attach(Path photograph) {
    browser
        .driver()
        .findElement(By.cssSelector("input[type=file]"))
        .sendKeys(photograph.toAbsolutePath().toString());
    press("Add");
    assertThat(browser.driver().findElements(By.cssSelector("ul.pictures img"))).hasSize(1);
    looksRight("correction-draft");
  }

  private static Path photograph(String of) throws IOException {
    BufferedImage image = new BufferedImage(640, 480, BufferedImage.TYPE_INT_RGB);
    image.createGraphics().drawString(of, 40, 40);
    Path file = Files.createTempFile("door", ".jpg");
    ImageIO.write(image, "jpeg", file.toFile());
    return file;
  }

  private String latchOf(String serial) {
    go("/expected?serial=" + serial);
    return shown();
  }

  private String shown() {
    return browser.driver().findElement(By.id("f-door-latch")).getText();
  }

  private void looksRight(String name) {
    if (Boolean.getBoolean("yearline.pictures")) {
      browser.record(name);
    }
    browser.desktop().light().assertAccessible();
    browser.phone().dark().assertAccessible();
    browser.size(320, 700);
    assertThat(browser.sidewaysScroll()).isZero();
    browser.desktop().light();
  }

  private void as(Actor actor) {
    browser.driver().manage().deleteAllCookies();
    SignedIn.in(browser, "http://localhost:" + port, actor);
  }

  private void go(String path) {
    browser.open("http://localhost:" + port + path);
  }

  private void follow(String link) {
    browser.press(By.linkText(link));
  }

  private void press(String button) {
    browser.press(By.xpath("//main//button[normalize-space()='" + button + "']"));
  }

  private void type(String id, String text) {
    WebElement field = browser.driver().findElement(By.id(id));
    field.clear();
    field.sendKeys(text);
  }

  /** The field of the cut-in for the LA-2B. */
  private String cutIn(String column) {
    WebElement variant =
        browser
            .driver()
            .findElement(
                By.cssSelector("input[name^='cut-ins.'][name$='.variant'][value='la-2b']"));
    if (!variant.isDisplayed()) {
      variant.findElement(By.xpath("./ancestor::details/summary")).click();
    }
    String id = variant.getDomAttribute("name");
    return id.substring(0, id.lastIndexOf('.') + 1) + column;
  }

  private String text() {
    return browser.driver().findElement(By.tagName("main")).getText();
  }
}
