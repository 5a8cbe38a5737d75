package club.yearline.groundschool;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.accounts.Role;
import club.yearline.testing.Browser;
import club.yearline.testing.DemoInBrowser;
import club.yearline.testing.SignedIn;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.WebElement;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

/** Hand-outs over the demo: on paper, and kept by a member from the form on. */
class HandoutsInBrowserTest extends DemoInBrowser {

  private static final int TWO_MEBIBYTES = 2 * 1024 * 1024;

  private static final String MANY =
      "f=fin-shape&f=door-latch&f=rear-window&f=beacon&f=gross-weight&f=cabin-vents&f=wing-tip"
          + "&f=flap-drive&title=Turnstone%20recognition&remarks=Bring%20a%20torch.";

  @Autowired private ApplicationContext context;

  @Test
  void tenSheetsWithPicturesAreLight() throws Exception {
    byte[] bytes = fetch("/ground-school/hand-out.pdf?rev=2&" + MANY);
    keep("hand-out.pdf", bytes);
    keep("wall-chart.pdf", fetch("/ground-school/wall-chart/turnstone/pdf?rev=2"));
    keep("wall-chart.svg", fetch("/ground-school/wall-chart/turnstone/svg?rev=2"));
    try (PDDocument pdf = Loader.loadPDF(bytes)) {
      assertThat(pdf.getNumberOfPages()).isBetween(4, 20);
      assertThat((double) bytes.length * 10 / pdf.getNumberOfPages()).isLessThan(TWO_MEBIBYTES);
      assertThat(new PDFTextStripper().getText(pdf)).contains("Bring a torch.", "Fin");
    }
  }

  @Test
  void aMemberPutsOneTogetherKeepsItAndThrowsItAway(Browser browser) {
    SignedIn.in(browser, at(""), SignedIn.person(context, "Teacher Hand", Role.MEMBER));
    browser.open(at("/ground-school?family=turnstone"));
    browser.driver().findElement(By.id("title")).sendKeys("Latches");
    tick(browser, "f-door-latch");
    tick(browser, "v-la-2b");
    browser.press("main form[method=get] button[type=submit]");
    assertThat(browser.driver().findElement(By.cssSelector(".made li")).getText())
        .contains("Door latch");
    browser.press(".made form button");
    assertThat(browser.driver().findElement(By.tagName("h1")).getText()).isEqualTo("Latches");
    assertThat(browser.driver().findElement(By.tagName("main")).getText())
        .contains("It is at the newest revision.");
    browser.assertAccessible().press(".plate + .actions a.button");
    assertThat(browser.driver().getCurrentUrl()).contains("f=door-latch&v=la-2b").contains("rev=2");
    browser.open(at("/ground-school"));
    browser.press(By.linkText("Latches"));
    browser.press("form[action$=delete] button");
    assertThat(browser.driver().findElement(By.id("kept")).getText()).contains("None yet.");
  }

  private static void tick(Browser browser, String id) {
    WebElement box = browser.driver().findElement(By.id(id));
    ((JavascriptExecutor) browser.driver())
        .executeScript("arguments[0].scrollIntoView({block: 'center'})", box);
    box.click();
  }

  private byte[] fetch(String path) throws IOException, InterruptedException {
    HttpResponse<byte[]> answer =
        HttpClient.newHttpClient()
            .send(
                HttpRequest.newBuilder(URI.create(at(path))).build(),
                HttpResponse.BodyHandlers.ofByteArray());
    assertThat(answer.statusCode()).isEqualTo(200);
    return answer.body();
  }

  /** To be looked at. */
  private static void keep(String name, byte[] bytes) throws IOException {
    if (Boolean.getBoolean("yearline.pictures")) {
      Path folder = Files.createDirectories(Path.of("target", "screenshots"));
      Files.write(folder.resolve("ground-school-" + name), bytes);
    }
  }
}
