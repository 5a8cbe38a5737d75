package club.yearline.testing;

import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import org.openqa.selenium.By;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.support.ui.WebDriverWait;

/**
 * A headless Chromium for tests. Downloads nothing: browser and driver are the system's.
 *
 * <p>{@link #driver} is Selenium's own, for everything that has no method here.
 */
public final class Browser implements AutoCloseable {

  private static final Path SHOTS = Path.of("target", "screenshots");
  private static final List<String> WCAG_22_AA =
      List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice");

  private static final String AXE = axe();

  private final ChromeDriver driver;

  Browser(Path chromium, Path chromedriver) {
    ChromeOptions options = new ChromeOptions();
    options.setBinary(chromium.toFile());
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--disable-dev-shm-usage",
        "--user-data-dir=" + freshProfile());
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(chromedriver.toFile())
            .usingAnyFreePort()
            .build();
    driver = new ChromeDriver(service, options);
    driver.manage().timeouts().pageLoadTimeout(Duration.ofSeconds(60));
    driver.manage().timeouts().scriptTimeout(Duration.ofSeconds(180));
    desktop();
    light();
    workers(false);
  }

  /** Selenium's driver. */
  public WebDriver driver() {
    return driver;
  }

  /** Opens an address. */
  public Browser open(String url) {
    driver.get(url);
    return this;
  }

  /** Is nobody again: the browser is shared, and whoever sat at it before may be signed in. */
  public Browser leave() {
    tell("Network.clearBrowserCookies", Map.of());
    return this;
  }

  /** Clicks what leads to another page, and waits until that page is there to its end. */
  public Browser press(String selector) {
    return press(By.cssSelector(selector));
  }

  /** Clicks what leads to another page, and waits until that page is there to its end. */
  public Browser press(By what) {
    return turn(() -> driver.findElement(what).click());
  }

  /**
   * Does what leads to another page, and waits until that page is there to its end. The driver's
   * own waiting does not cover this: a click may return before the browser has begun to leave, and
   * without scripts it waits for nothing.
   */
  public Browser turn(Runnable step) {
    WebElement before = driver.findElement(By.tagName("html"));
    step.run();
    new WebDriverWait(driver, Duration.ofSeconds(60))
        .ignoring(WebDriverException.class)
        .until(
            page ->
                !page.findElement(By.tagName("html")).equals(before)
                    && !page.findElements(By.cssSelector("body > footer")).isEmpty());
    return this;
  }

  /** A phone held upright, 390 by 844. */
  public Browser phone() {
    return size(390, 844);
  }

  /** A desktop window, 1280 by 900. */
  public Browser desktop() {
    return size(1280, 900);
  }

  /** A window of any size, in CSS pixels. */
  public Browser size(int width, int height) {
    tell(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 500));
    return this;
  }

  /** The reader prefers a light page. */
  public Browser light() {
    return scheme("light");
  }

  /** The reader prefers a dark page. */
  public Browser dark() {
    return scheme("dark");
  }

  /**
   * Lets service workers answer for this tab's pages, or not. They do not unless a test asks: what
   * has passed through one is reported with its size before compression.
   */
  public Browser workers(boolean on) {
    tell("Network.enable", Map.of());
    tell("Network.setBypassServiceWorker", Map.of("bypass", !on));
    return this;
  }

  /** Switches scripts off or on, from the next page on. */
  public Browser scripts(boolean on) {
    tell("Emulation.setScriptExecutionDisabled", Map.of("value", !on));
    return this;
  }

  /** How far the page can be scrolled sideways, in CSS pixels. */
  public long sidewaysScroll() {
    return (Long)
        driver.executeScript(
            "const r = document.scrollingElement;"
                + "return Math.max(0, r.scrollWidth - document.documentElement.clientWidth)");
  }

  /** What the page and all that it has loaded weigh as they travel, in bytes, cached or not. */
  public long weight() {
    return ((Number)
            driver.executeScript(
                "return performance.getEntries().reduce((sum, e) => sum + (e.encodedBodySize || 0), 0)"))
        .longValue();
  }

  /**
   * Fails, listing the violations, if the page as it stands breaks a rule of WCAG 2.2 A or AA or a
   * good practice that axe-core can check.
   */
  public Browser assertAccessible() {
    if (!Boolean.TRUE.equals(driver.executeScript("return 'axe' in window"))) {
      driver.executeScript(AXE);
    }
    // Violations alone: to tell what passes costs more than all the checks.
    Object violations =
        driver.executeAsyncScript(
            """
            const [rules, tell] = arguments;
            axe.run({ runOnly: rules, resultTypes: ['violations'], preload: false }).then(found => tell(
                found.violations.map(v => `${v.impact} ${v.id}: ${v.help}\n`
                    + v.nodes.map(n => `    ${n.html}\n`).join('')).join('')),
              failed => tell('' + failed));
            """,
            WCAG_22_AA);
    if (!"".equals(violations)) {
      throw new AssertionError(driver.getCurrentUrl() + "\n" + violations);
    }
    return this;
  }

  /** Writes the page as NAME-{phone,desktop}-{light,dark}.png and NAME.pdf, and leaves it light. */
  public Browser record(String name) {
    for (boolean narrow : new boolean[] {true, false}) {
      for (boolean night : new boolean[] {false, true}) {
        screenshot(name, narrow, night);
      }
    }
    light();
    return pdf(name);
  }

  /** Writes the whole page, to the end of its scroll, as a picture. */
  private void screenshot(String name, boolean narrow, boolean night) {
    Browser sized = narrow ? phone() : desktop();
    Browser shown = night ? sized.dark() : sized.light();
    String file =
        "%s-%s-%s.png".formatted(name, narrow ? "phone" : "desktop", night ? "dark" : "light");
    Map<String, Object> answer =
        shown.tell("Page.captureScreenshot", Map.of("captureBeyondViewport", true, "clip", page()));
    write(file, answer);
  }

  /** Writes the page as it prints, on A4. */
  public Browser pdf(String name) {
    write(name + ".pdf", tell("Page.printToPDF", Map.of("paperWidth", 8.27, "paperHeight", 11.69)));
    return this;
  }

  private Map<String, Object> page() {
    Object height = driver.executeScript("return document.documentElement.scrollHeight");
    Object width = driver.executeScript("return document.documentElement.clientWidth");
    return Map.of("x", 0, "y", 0, "width", width, "height", height, "scale", 1);
  }

  private Browser scheme(String scheme) {
    tell(
        "Emulation.setEmulatedMedia",
        Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
    return this;
  }

  private Map<String, Object> tell(String command, Map<String, Object> parameters) {
    return driver.executeCdpCommand(command, parameters);
  }

  private static void write(String file, Map<String, Object> answer) {
    try {
      Files.createDirectories(SHOTS);
      Files.write(SHOTS.resolve(file), Base64.getDecoder().decode((String) answer.get("data")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String axe() {
    try (InputStream script = AxeBuilder.class.getResourceAsStream("/axe.min.js")) {
      return new String(script.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String freshProfile() {
    try {
      return Files.createTempDirectory("browser").toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() {
    driver.quit();
  }
}
