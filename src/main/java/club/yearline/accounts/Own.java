package club.yearline.accounts;

import club.yearline.web.Phrases;
import java.util.List;
import org.springframework.security.authentication.InsufficientAuthenticationException;
import org.springframework.stereotype.Component;

/** What every page about the own account needs: the account, and proof that it is its owner. */
@Component
class Own {

  private final Accounts accounts;
  private final SignIn signIn;
  private final Phrases phrases;
  private final Club club;

  Own(Accounts accounts, SignIn signIn, Phrases phrases, Club club) {
    this.accounts = accounts;
    this.signIn = signIn;
    this.phrases = phrases;
    this.club = club;
  }

  Account account(Actor actor) {
    return accounts
        .find(actor.id())
        .orElseThrow(() -> new InsufficientAuthenticationException("The account was closed"));
  }

  Faults faults() {
    return new Faults(phrases);
  }

  /** Notes a fault unless the person's present password was typed. */
  void confirm(Account account, String current, Faults faults) {
    if (!signIn.confirms(account, current)) {
      faults.at("current", "account.current.wrong");
    }
  }

  /** Notes a fault unless a code of the second factor was typed, from the app or written down. */
  void confirmCode(Account account, String code, ClientAddress from, Faults faults) {
    if (!(signIn.withCode(account, code, from) instanceof SignIn.Outcome.Right)) {
      faults.at("code", "sign-in.code-wrong");
    }
  }

  /** What a password of this person must not be made of. */
  List<String> names(Account account) {
    return List.of(account.name(), account.email(), club.name());
  }
}
