package club.yearline.accounts;

import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;

import java.util.Locale;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.springframework.web.context.support.WebApplicationContextUtils;

/** What {@link club.yearline.testing.SignedIn} does inside this module. */
public final class ActingAs {

  private ActingAs() {}

  /** Acts as the test's person of a role: a row where there is a database. */
  public static RequestPostProcessor role(Role role) {
    return request -> {
      ApplicationContext context =
          WebApplicationContextUtils.getRequiredWebApplicationContext(request.getServletContext());
      return actor(person(context, role)).postProcessRequest(request);
    };
  }

  /** Acts as a given person. */
  public static RequestPostProcessor actor(Actor actor) {
    return authentication(new SignedInActor(actor));
  }

  /** The test's person of a role. */
  public static Actor person(ApplicationContext context, Role role) {
    String name = role.name().charAt(0) + role.name().toLowerCase(Locale.ROOT).substring(1);
    return context.getBeanNamesForType(Accounts.class).length == 0
        ? new Actor(role.ordinal() + 1, name, role)
        : person(context, name, role, "");
  }

  /** A person by name, with a row of its own; made at the first call. */
  public static Actor person(ApplicationContext context, String name, Role role, String password) {
    Accounts accounts = context.getBean(Accounts.class);
    EmailAddress email = EmailAddress.of(email(name)).orElseThrow();
    return accounts
        .withEmail(email)
        .map(Account::actor)
        .orElseGet(
            () -> {
              String hash =
                  password.isEmpty() ? "none" : context.getBean(Hashing.class).hash(password);
              return new Actor(accounts.add(name, email, hash, role), name, role);
            });
  }

  /** The address that a person of a test signs in with. */
  public static String email(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", ".") + "@club.example";
  }
}
