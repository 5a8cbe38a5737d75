package club.yearline.accounts;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.testing.Browser;
import club.yearline.testing.InBrowser;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.ContextConfiguration;

/** From the set-up link to a member with a second factor, in a real browser without scripts. */
@InBrowser
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT, properties = "yearline.demo=false")
@ContextConfiguration(initializers = WholeApplication.Fresh.class)
class AccountsInBrowserTest {

  private static final String KEEPERS = "ten kites over the threshold";
  private static final String MEMBERS = "two mugs of tea in the tower";

  @LocalServerPort private int port;
  @Autowired private KeeperLink keeperLink;
  @Autowired private Accounts accounts;
  @Autowired private SecondFactors factors;

  private Browser browser;

  @Test
  void theKeeperSetsUpAndInvitesAndTheMemberTurnsTheSecondFactorOn(Browser browser) {
    this.browser = browser;
    browser.scripts(false).phone();
    becomeKeeper();
    String invitation = invite();
    signOut();
    join(invitation);
    turnSecondFactorOn();
    signOut();
    signInWithCode();
    look("account");
    browser.open(base() + "/admin");
    assertThat(text()).contains("not open to you");
  }

  private void becomeKeeper() {
    browser.open(base() + keeperLink.make());
    look("set-up");
    type("name", "Kay Keeper");
    type("email", "kay@club.example");
    type("password", KEEPERS);
    browser.press("main form button");
    look("sign-in");
    signIn("kay@club.example", KEEPERS);
    assertThat(text()).contains("Kay Keeper");
    for (String page : new String[] {"", "/people", "/people/1", "/joining", "/settings", "/log"}) {
      browser.open(base() + "/admin" + page);
      look("admin" + page.replace('/', '-'));
    }
  }

  private String invite() {
    browser.open(base() + "/admin/joining");
    browser.press("form[action$='/invite'] button");
    look("invited");
    String link = element("#link").getText();
    assertThat(link).startsWith(base() + "/join/");
    return link;
  }

  private void join(String invitation) {
    browser.open(invitation);
    look("join");
    type("name", "Mia Member");
    type("email", "mia@club.example");
    type("password", "short");
    browser.press("main form button");
    look("join-fault");
    assertThat(text()).contains("fewer than 15 characters");
    type("password", MEMBERS);
    browser.press("main form button");
    signIn("mia@club.example", MEMBERS);
    assertThat(text()).contains("Mia Member");
  }

  private void turnSecondFactorOn() {
    browser.open(base() + "/account/second-factor");
    look("second-factor-off");
    type("current", MEMBERS);
    browser.press("form[action$='/prepare'] button");
    look("second-factor-scan");
    String secret = element("#secret").getText();
    type("code", OneTimeCodes.code(secret, Instant.now().minusSeconds(30)));
    browser.press("form[action$='/second-factor/on'] button");
    look("recovery-codes");
    assertThat(browser.driver().findElements(By.cssSelector("main .rows code"))).hasSize(10);
    browser.open(base() + "/account/sessions");
    look("sessions");
    browser.open(base() + "/account/second-factor");
    look("second-factor-on");
  }

  private void signInWithCode() {
    signIn("mia@club.example", MEMBERS);
    look("code");
    assertThat(browser.driver().getCurrentUrl()).endsWith("/sign-in/code");
    Account mia =
        accounts.withEmail(EmailAddress.of("mia@club.example").orElseThrow()).orElseThrow();
    type("code", OneTimeCodes.code(factors.secretOf(mia).orElseThrow(), Instant.now()));
    browser.press("main form button");
    assertThat(text()).contains("Mia Member");
  }

  private void signIn(String email, String password) {
    browser.open(base() + "/sign-in");
    type("email", email);
    type("password", password);
    browser.press("main form button");
  }

  private void signOut() {
    element("details.desk summary").click();
    browser.press("details.desk button");
    assertThat(element("a.desk").getText()).isEqualTo("Sign in");
  }

  /** Every page on the way is checked, and fits a phone. */
  private void look(String name) {
    browser.scripts(true).assertAccessible().record("accounts-" + name);
    browser.scripts(false).phone();
    assertThat(browser.sidewaysScroll()).as(name).isZero();
  }

  private void type(String field, String text) {
    WebElement input = element("#" + field);
    input.clear();
    input.sendKeys(text);
  }

  private WebElement element(String selector) {
    return browser.driver().findElement(By.cssSelector(selector));
  }

  private String text() {
    return element("body").getText();
  }

  private String base() {
    return "http://localhost:" + port;
  }
}
