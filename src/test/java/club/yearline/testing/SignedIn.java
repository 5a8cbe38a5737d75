package club.yearline.testing;

import club.yearline.accounts.ActingAs;
import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import org.openqa.selenium.By;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/**
 * Acts as somebody who has signed in.
 *
 * <pre>{@code
 * mvc.perform(get("/inbox").with(SignedIn.as(Role.MEMBER)))
 * mvc.perform(post("/corrections").with(SignedIn.as(Role.MEMBER)).with(csrf()))
 *
 * Actor other = SignedIn.person(context, "Ann Other", Role.MODERATOR);
 * mvc.perform(get("/inbox").with(SignedIn.as(other)))
 * SignedIn.in(browser, "http://localhost:" + port, other);
 * }</pre>
 *
 * <p>Where the test has a database, a person is a row in it. In tests of single pages without a
 * database, that of a role is made up.
 */
public final class SignedIn {

  /** The password of every person made here. */
  public static final String PASSWORD = "hangar doors face the wind";

  private SignedIn() {}

  /** Sends a request as the test's person of a role. */
  public static RequestPostProcessor as(Role role) {
    return ActingAs.role(role);
  }

  /** Sends a request as a given person. */
  public static RequestPostProcessor as(Actor actor) {
    return ActingAs.actor(actor);
  }

  /** The test's person of a role. */
  public static Actor person(ApplicationContext context, Role role) {
    return ActingAs.person(context, role);
  }

  /** Another person, made at the first call with a name. */
  public static Actor person(ApplicationContext context, String name, Role role) {
    return ActingAs.person(context, name, role, PASSWORD);
  }

  /** Signs a person in by the form; the person must come from {@link #person} with a name. */
  public static void in(Browser browser, String base, Actor actor) {
    browser.leave().open(base + "/sign-in");
    browser.driver().findElement(By.id("email")).sendKeys(ActingAs.email(actor.name()));
    browser.driver().findElement(By.id("password")).sendKeys(PASSWORD);
    browser.press("main button[type=submit]");
    if (browser.driver().getCurrentUrl().contains("/sign-in")) {
      throw new AssertionError("Not signed in: " + browser.driver().getPageSource());
    }
  }
}
