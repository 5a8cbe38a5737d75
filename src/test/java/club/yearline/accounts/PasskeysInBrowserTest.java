package club.yearline.accounts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.openqa.selenium.support.ui.ExpectedConditions.textToBePresentInElementLocated;
import static org.openqa.selenium.support.ui.ExpectedConditions.urlContains;

import club.yearline.testing.Browser;
import club.yearline.testing.InBrowser;
import club.yearline.testing.SignedIn;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.ExpectedCondition;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.WebDriverWait;
import org.openqa.selenium.virtualauthenticator.Credential;
import org.openqa.selenium.virtualauthenticator.HasVirtualAuthenticator;
import org.openqa.selenium.virtualauthenticator.VirtualAuthenticator;
import org.openqa.selenium.virtualauthenticator.VirtualAuthenticatorOptions;
import org.openqa.selenium.virtualauthenticator.VirtualAuthenticatorOptions.Protocol;
import org.openqa.selenium.virtualauthenticator.VirtualAuthenticatorOptions.Transport;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.test.context.ContextConfiguration;

/** Passkeys in a real browser, with the authenticator that browsers keep for tests. */
@InBrowser
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT, properties = "yearline.demo=false")
@ContextConfiguration(initializers = WholeApplication.Fresh.class)
class PasskeysInBrowserTest {

  @LocalServerPort private int port;
  @Autowired private ApplicationContext context;
  @Autowired private Passkeys passkeys;
  @Autowired private SecurityLog log;

  private Browser browser;

  @Test
  void aPasskeyIsMadeSignsInAndIsRemoved(Browser browser) {
    this.browser = browser;
    Actor owner = SignedIn.person(context, "Petra Key", Role.MEMBER);
    HasVirtualAuthenticator devices = (HasVirtualAuthenticator) browser.driver();
    VirtualAuthenticator device = devices.addVirtualAuthenticator(options(true));
    make(owner);
    signOut();

    open("/sign-in?to=/account/passkeys");
    look("sign-in");
    click("form[data-passkey] button", urlContains("/account/passkeys"));
    assertThat(text()).contains("phone", "last used", "Petra Key");
    look("list");

    Credential key = device.getCredentials().get(0);
    assertThat(key.isResidentCredential()).isTrue();
    assertThat(key.getRpId()).isEqualTo("localhost");
    aCopyThatCountsLessIsRefused(devices, device, key);
    remove(owner);
    devices.removeVirtualAuthenticator(devices.addVirtualAuthenticator(options(true)));
  }

  @Test
  void aDeviceThatDoesNotKnowItsOwnerIsSaidNoTo(Browser browser) {
    this.browser = browser;
    Actor owner = SignedIn.person(context, "Paul Key", Role.MEMBER);
    HasVirtualAuthenticator devices = (HasVirtualAuthenticator) browser.driver();
    VirtualAuthenticator device = devices.addVirtualAuthenticator(options(false));
    SignedIn.in(browser, base(), owner);
    prepare();
    element("form[data-question] button").click();
    await(textToBePresentInElementLocated(By.cssSelector("form .fault"), "gave no answer"));
    assertThat(passkeys.of(owner.id())).isEmpty();
    devices.removeVirtualAuthenticator(device);
    signOut();
  }

  @Test
  void withoutScriptsThereIsNoButtonAndThePasswordWorks(Browser browser) {
    this.browser = browser;
    Actor owner = SignedIn.person(context, "Pia Plain", Role.MEMBER);
    browser.scripts(false);
    open("/sign-in");
    assertThat(element("form[data-passkey]").isDisplayed()).isFalse();
    SignedIn.in(browser, base(), owner);
    open("/account/passkeys");
    assertThat(element("form[data-passkey]").isDisplayed()).isFalse();
    assertThat(text()).contains("No passkey yet", "Passkeys take scripts");
    browser.scripts(true);
    signOut();
  }

  @Test
  void aPageUnderAnotherNameShowsNoButton(Browser browser) {
    this.browser = browser;
    browser.open("http://127.0.0.1:" + port + "/sign-in");
    assertThat(element("form[data-passkey]").isDisplayed()).isFalse();
  }

  private void make(Actor owner) {
    SignedIn.in(browser, base(), owner);
    prepare();
    look("make");
    click("form[data-question] button", urlContains("/account/passkeys"));
    await(textToBePresentInElementLocated(By.id("content"), "The passkey is added"));
    assertThat(passkeys.of(owner.id())).hasSize(1);
    prepare();
    element("form[data-question] button").click();
    await(textToBePresentInElementLocated(By.cssSelector("form .fault"), "has a passkey"));
  }

  private void prepare() {
    open("/account/passkeys");
    await(ExpectedConditions.visibilityOfElementLocated(By.id("name"))).sendKeys("phone");
    element("#current").sendKeys(SignedIn.PASSWORD);
    element("form[data-passkey] button").click();
    await(
        ExpectedConditions.visibilityOfElementLocated(
            By.cssSelector("form[data-question] button")));
  }

  private void aCopyThatCountsLessIsRefused(
      HasVirtualAuthenticator devices, VirtualAuthenticator device, Credential key) {
    devices.removeVirtualAuthenticator(device);
    VirtualAuthenticator copy = devices.addVirtualAuthenticator(options(true));
    copy.addCredential(
        Credential.createResidentCredential(
            key.getId(), key.getRpId(), key.getPrivateKey(), key.getUserHandle(), 0));
    signOut();
    open("/sign-in");
    element("form[data-passkey] button").click();
    await(textToBePresentInElementLocated(By.id("content"), "does not open an account here"));
    assertThat(log.page(1, 1).get(0).kind()).isEqualTo(SecurityEvent.Kind.PASSKEY_COUNT_WENT_BACK);
    devices.removeVirtualAuthenticator(copy);
  }

  private void remove(Actor owner) {
    SignedIn.in(browser, base(), owner);
    open("/account/passkeys");
    element("main .rows summary").click();
    element("main .rows input[type=password]").sendKeys(SignedIn.PASSWORD);
    look("remove");
    element("main .rows button").click();
    await(textToBePresentInElementLocated(By.id("content"), "opens this account no more"));
    assertThat(passkeys.of(owner.id())).isEmpty();
    signOut();
  }

  private static VirtualAuthenticatorOptions options(boolean knowsOwner) {
    return new VirtualAuthenticatorOptions()
        .setProtocol(Protocol.CTAP2)
        .setTransport(Transport.INTERNAL)
        .setHasResidentKey(true)
        .setHasUserVerification(true)
        .setIsUserVerified(knowsOwner);
  }

  private void look(String name) {
    browser.assertAccessible().record("passkey-" + name).phone();
    assertThat(browser.sidewaysScroll()).as(name).isZero();
    browser.desktop();
  }

  private void click(String button, ExpectedCondition<?> then) {
    WebElement page = element("html");
    await(ExpectedConditions.elementToBeClickable(By.cssSelector(button))).click();
    await(ExpectedConditions.stalenessOf(page));
    await(then);
  }

  private void signOut() {
    browser.driver().manage().deleteCookieNamed("yearline");
  }

  private void open(String path) {
    browser.open(base() + path);
  }

  private <T> T await(ExpectedCondition<T> condition) {
    return new WebDriverWait(browser.driver(), Duration.ofSeconds(60)).until(condition);
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
