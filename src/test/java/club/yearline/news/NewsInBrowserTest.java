package club.yearline.news;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.corrections.CorrectionMoved;
import club.yearline.testing.Browser;
import club.yearline.testing.DemoInBrowser;
import club.yearline.testing.SignedIn;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.transaction.support.TransactionTemplate;

/** Watching and the inbox in a real browser, as somebody without scripts uses them. */
class NewsInBrowserTest extends DemoInBrowser {

  @Autowired private ApplicationContext context;
  @Autowired private TransactionTemplate transactions;

  @Test
  void aMemberWatchesReadsAndStops(Browser browser) {
    Actor member = SignedIn.person(context, "Nora News", Role.MEMBER);
    Actor moderator = SignedIn.person(context, "Mona Moderator", Role.MODERATOR);
    browser.scripts(true).desktop();
    SignedIn.in(browser, at(""), member);
    browser.open(at("/families/turnstone"));
    look(browser, "family-signed-in");
    browser.press("form[action='/watching'] button");
    assertThat(browser.driver().findElement(By.cssSelector("main form button")).getText())
        .isEqualTo("Stop watching");
    browser.open(at("/watching"));
    look(browser, "watching");
    transactions.executeWithoutResult(
        status ->
            context.publishEvent(
                new CorrectionMoved(
                    7, "The fin came later", "sent-back", member.id(), moderator.id(), "Page?")));
    browser.open(at("/families"));
    assertThat(text(browser, "details.desk summary")).contains("1 new");
    browser.open(at("/inbox"));
    look(browser, "inbox");
    browser.press("form[action='/inbox/read'] button");
    assertThat(text(browser, "details.desk summary")).doesNotContain("new");
    browser.open(at("/watching"));
    browser.press("form[action='/watching/stop'] button");
    look(browser, "watching-nothing");
    assertThat(text(browser, "main")).contains("You watch nothing yet.");
  }

  private static void look(Browser browser, String name) {
    browser.desktop().light().assertAccessible().phone().dark().assertAccessible().light();
    if (Boolean.getBoolean("yearline.pictures")) {
      browser.record("news-" + name);
    }
    browser.size(320, 700);
    assertThat(browser.sidewaysScroll()).isZero();
    browser.desktop();
  }

  private static String text(Browser browser, String selector) {
    return browser.driver().findElement(By.cssSelector(selector)).getText();
  }
}
