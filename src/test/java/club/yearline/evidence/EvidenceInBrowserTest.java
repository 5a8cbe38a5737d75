package club.yearline.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.accounts.Role;
import club.yearline.testing.Browser;
import club.yearline.testing.DemoInBrowser;
import club.yearline.testing.SignedIn;
import java.io.IOException;
import java.time.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.support.ui.WebDriverWait;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * The evidence plot in a browser: beside its change, on its own, and on the way to a correction.
 */
class EvidenceInBrowserTest extends DemoInBrowser {

  private static final String CHANGE = "/changes/oil-cooler-bulkhead";

  @Autowired private JdbcClient jdbc;
  @Autowired private ApplicationContext context;

  private long owner;

  private void looked() {
    owner = SignedIn.person(context, "Olga Owner", Role.MEMBER).id();
    RegisterRows register = new RegisterRows(jdbc, owner);
    for (int ordinal : new int[] {702, 712, 725, 731, 741, 745, 746, 755}) {
      register.seen(ordinal, ordinal != 741, "oil-cooler", "front");
    }
    for (int ordinal : new int[] {736, 749, 750, 758, 763, 766, 771, 790}) {
      register.seen(ordinal, ordinal != 763, "oil-cooler", "bulkhead");
    }
  }

  /** The other tests of this start find the register as it was. */
  @AfterEach
  void takeAway() {
    jdbc.sql("delete from airframe where owner_id = :owner").param("owner", owner).update();
  }

  @Test
  void thePlotComesToTheChangeItselfAndWithoutScriptsALinkDoes(Browser browser) {
    looked();
    browser.desktop().light().open(at(CHANGE));
    awaitPlot(browser);
    browser.assertAccessible().phone().dark().assertAccessible().light();
    assertThat(browser.sidewaysScroll()).isZero();
    browser.scripts(false).open(at(CHANGE)).press("a[href$='/evidence']");
    assertThat(browser.driver().findElements(By.cssSelector("figure.evidence-plot"))).hasSize(1);
    browser.scripts(true);
  }

  @Test
  void thePageIsAccessibleAndFitsAPhone(Browser browser) throws IOException {
    looked();
    browser.desktop().light().open(at(CHANGE + "/evidence"));
    browser.assertAccessible().phone().dark().assertAccessible().light();
    browser.size(320, 700);
    assertThat(browser.sidewaysScroll()).isZero();
    if (Boolean.getBoolean("yearline.pictures")) {
      browser.record("evidence");
      browser.desktop().pdf("evidence");
    }
  }

  @Test
  void aMemberGoesFromThePlotToTheFilledForm(Browser browser) {
    looked();
    SignedIn.in(browser, at(""), SignedIn.person(context, "Olga Owner", Role.MEMBER));
    browser.open(at(CHANGE + "/evidence")).press("form[action$='/corrections/narrow'] button");
    assertThat(browser.driver().getCurrentUrl()).contains("/edit?kind=change");
    browser.assertAccessible();
  }

  private static void awaitPlot(Browser browser) {
    new WebDriverWait(browser.driver(), Duration.ofSeconds(30))
        .until(d -> !d.findElements(By.cssSelector("figure.evidence-plot")).isEmpty());
  }
}
