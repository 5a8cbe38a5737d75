package club.yearline.accounts;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * Accounts to explore the demo with, one club's worth of invented people. They are made in an
 * installation that has no account, each with a password of its own that is told once and stored
 * nowhere.
 */
@Component
public class DemoPeople {

  private static final int PASSWORD_LENGTH = 20;

  private final Accounts accounts;
  private final Hashing hashing;

  DemoPeople(Accounts accounts, Hashing hashing) {
    this.accounts = accounts;
    this.hashing = hashing;
  }

  /**
   * An account as it is told once.
   *
   * @param name the person's name
   * @param role what the person may do
   * @param email what the person signs in with
   * @param password likewise
   */
  public record Invited(String name, Role role, String email, String password) {}

  private record Person(String name, Role role) {}

  private static final List<Person> CLUB =
      List.of(
          new Person("Ylva Strand", Role.MEMBER),
          new Person("Tor Nyhus", Role.MEMBER),
          new Person("Runa Kvist", Role.MEMBER),
          new Person("Eskil Dahl", Role.MODERATOR),
          new Person("Sigga Holm", Role.MODERATOR),
          new Person("Marit Aune", Role.KEEPER));

  /** Makes the accounts; nobody where there is an account already. */
  @Transactional
  public List<Invited> invite() {
    if (!accounts.all().isEmpty()) {
      return List.of();
    }
    List<Invited> invited = new ArrayList<>();
    for (Person person : CLUB) {
      String first = person.name().substring(0, person.name().indexOf(' '));
      EmailAddress email =
          EmailAddress.of(first.toLowerCase(Locale.ROOT) + "@demo.example").orElseThrow();
      String password = Secret.fresh().substring(0, PASSWORD_LENGTH);
      accounts.add(person.name(), email, hashing.hash(password), person.role());
      invited.add(new Invited(person.name(), person.role(), email.text(), password));
    }
    return invited;
  }
}
