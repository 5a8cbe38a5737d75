package club.yearline.corrections;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.catalog.EntryRef;
import club.yearline.effectivity.EntryKind;
import club.yearline.tables.Sheet;
import club.yearline.testing.Browser;
import club.yearline.testing.DemoInBrowser;
import club.yearline.testing.Sample;
import club.yearline.testing.SignedIn;
import club.yearline.uploads.Shots;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

/** Files are sent from a real browser, as somebody without scripts sends them. */
class FilesInBrowserTest extends DemoInBrowser {

  @Autowired private ApplicationContext context;
  @Autowired private Drafting drafting;
  @Autowired private Attaching attaching;

  @Test
  void aPhotographIsAddedSeenAndRemoved(Browser browser, @TempDir Path folder) throws Exception {
    Actor member = SignedIn.person(context, "Fia Files", Role.MEMBER);
    EntryRef ref = new EntryRef(EntryKind.SOURCE, "in-the-browser");
    Proposal proposal = new Proposal(ref, Sheet.of(Sample.source(ref.key())), 0);
    long id = drafting.begin(member, "A parts book", proposal, "in-the-browser").id();
    Path photograph = Files.write(folder.resolve("latch.jpg"), Shots.withPlace(6));
    Path script = Files.writeString(folder.resolve("latch.png"), "<script>alert(1)</script>");
    browser.scripts(false).desktop();
    signIn(browser, member);

    browser.open(at("/corrections/" + id));
    send(browser, "#files", photograph);
    assertThat(browser.driver().getCurrentUrl()).endsWith("/corrections/" + id + "#attached");
    assertThat(browser.driver().findElements(By.cssSelector(".pictures img"))).hasSize(1);

    browser.open(at("/corrections/" + id + "/files"));
    send(browser, "#files", script);
    assertThat(text(browser, ".faults")).contains("latch.png: This is neither");

    browser.scripts(true).open(at("/corrections/" + id + "/files"));
    look(browser, "attached");
    assertThat(browser.driver().findElement(By.cssSelector(".pictures img")).getSize().getWidth())
        .isPositive();
    browser.press(".pictures form button");
    assertThat(attaching.attached(member, id).files()).isEmpty();
  }

  @Test
  void aPackageWithErrorsIsReported(Browser browser, @TempDir Path folder) throws Exception {
    Actor member = SignedIn.person(context, "Fia Files", Role.MEMBER);
    Path broken = Files.writeString(folder.resolve("records.zip"), "just text");
    browser.scripts(true).desktop();
    signIn(browser, member);
    browser.open(at("/corrections/package"));
    look(browser, "package");
    send(browser, "#file", broken);
    assertThat(text(browser, "#report")).contains("records.zip has errors");
    look(browser, "package-refused");
  }

  /** The browser is shared: whoever sat at it before leaves. */
  private void signIn(Browser browser, Actor member) {
    browser.open(at("/families")).driver().manage().deleteAllCookies();
    SignedIn.in(browser, at(""), member);
  }

  private static void send(Browser browser, String field, Path file) {
    browser.driver().findElement(By.cssSelector("input" + field)).sendKeys(file.toString());
    browser.press("form:has(input" + field + ") button[type=submit]");
  }

  private static void look(Browser browser, String name) {
    browser.desktop().light().assertAccessible().phone().dark().assertAccessible().light();
    if (Boolean.getBoolean("yearline.pictures")) {
      browser.record("files-" + name);
    }
    browser.size(320, 700);
    assertThat(browser.sidewaysScroll()).isZero();
    browser.desktop();
  }

  private static String text(Browser browser, String selector) {
    return browser.driver().findElement(By.cssSelector(selector)).getText();
  }
}
