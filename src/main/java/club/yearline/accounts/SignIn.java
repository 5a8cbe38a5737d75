package club.yearline.accounts;

import java.util.Optional;
import org.springframework.stereotype.Service;

/** Checks who wants to sign in. */
@Service
class SignIn {

  private final Accounts accounts;
  private final Hashing hashing;

  SignIn(Accounts accounts, Hashing hashing) {
    this.accounts = accounts;
    this.hashing = hashing;
  }

  /** The account that an address and a password open; empty if they open none. */
  Optional<Account> with(String email, String password) {
    Optional<Account> account = EmailAddress.of(email).flatMap(accounts::withEmail);
    boolean right = hashing.matches(password, account.map(Account::password).orElse(null));
    return right ? account : Optional.empty();
  }
}
