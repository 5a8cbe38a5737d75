package club.yearline.accounts;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What somebody types to get an account.
 *
 * @param name as the person wants to be called
 * @param email where the person is reached
 * @param password the password, never shown again
 */
record Entry(@Nullable String name, @Nullable String email, @Nullable String password) {

  static final int LONGEST_NAME = 120;

  String typedName() {
    return name == null ? "" : name.strip();
  }

  String typedEmail() {
    return email == null ? "" : email.strip();
  }

  String typedPassword() {
    return password == null ? "" : password;
  }

  Optional<EmailAddress> address() {
    return EmailAddress.of(email);
  }

  /** Notes what is wrong. */
  void check(Faults faults, String clubName) {
    checkName(typedName(), faults);
    if (address().isEmpty()) {
      faults.at("email", "person.email.wrong");
    }
    PasswordRules.fault(
            typedPassword(), PasswordRules.ALONE, List.of(typedName(), typedEmail(), clubName))
        .ifPresent(key -> faults.at("password", key));
  }

  static void checkName(String name, Faults faults) {
    if (name.isEmpty()) {
      faults.at("name", "person.name.missing");
    } else if (name.length() > LONGEST_NAME) {
      faults.at("name", "person.name.too-long");
    } else if (name.chars().anyMatch(Character::isISOControl)) {
      faults.at("name", "person.name.control");
    }
  }
}
