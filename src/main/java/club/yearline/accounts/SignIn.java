package club.yearline.accounts;

import club.yearline.accounts.SecurityEvent.Kind;
import java.time.Duration;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** Checks who wants to sign in. An unknown address is treated like a wrong password throughout. */
@Service
class SignIn {

  /** A whole club house behind one address may sign in; a machine may not. */
  private static final int PER_NETWORK = 60;

  private static final Duration PER_NETWORK_PERIOD = Duration.ofMinutes(10);

  private final Accounts accounts;
  private final Hashing hashing;
  private final FailedSignIns failed;
  private final Devices devices;
  private final SecondFactors factors;
  private final PasskeyCeremony passkeys;
  private final Throttle throttle;
  private final SecurityLog log;

  SignIn(
      Accounts accounts,
      Hashing hashing,
      FailedSignIns failed,
      Devices devices,
      SecondFactors factors,
      PasskeyCeremony passkeys,
      Throttle throttle,
      SecurityLog log) {
    this.accounts = accounts;
    this.hashing = hashing;
    this.failed = failed;
    this.devices = devices;
    this.factors = factors;
    this.passkeys = passkeys;
    this.throttle = throttle;
    this.log = log;
  }

  /** What became of an attempt. */
  sealed interface Outcome {

    /** The address and the password belong together; a code may still be needed. */
    record Right(Account account) implements Outcome {}

    record Wrong() implements Outcome {}

    /** Too many attempts: this one was not looked at. */
    record Wait(Duration time) implements Outcome {}
  }

  /**
   * Judges an address and a password.
   *
   * @param device what the browser remembers of an earlier sign-in; null if nothing
   */
  Outcome with(String email, String password, @Nullable String device, ClientAddress from) {
    Optional<EmailAddress> address = EmailAddress.of(email);
    Optional<Account> account = address.flatMap(accounts::withEmail);
    String counter = counter(address.map(EmailAddress::key).orElse(""), account, device);
    Duration wait = mayTry(counter, from);
    if (!wait.isZero()) {
      log.addFailure(Kind.SIGN_IN_SLOWED, account.map(Account::id).orElse(null), from);
      return new Outcome.Wait(wait);
    }
    if (!hashing.matches(password, account.map(Account::password).orElse(null))) {
      log.addFailure(Kind.SIGN_IN_FAILED, account.map(Account::id).orElse(null), from);
      return new Outcome.Wrong();
    }
    failed.forget(counter);
    Account opened = account.orElseThrow();
    if (hashing.isOutdated(opened.password())) {
      accounts.changePassword(opened.id(), hashing.hash(password));
    }
    return new Outcome.Right(opened);
  }

  /** Judges the code after a right password; each attempt counts against the account. */
  Outcome withCode(Account account, String code, ClientAddress from) {
    String counter = "code " + account.id();
    Duration wait = mayTry(counter, from);
    if (!wait.isZero()) {
      log.addFailure(Kind.SIGN_IN_SLOWED, account.id(), from);
      return new Outcome.Wait(wait);
    }
    if (factors.accepts(account, code)) {
      failed.forget(counter);
      return new Outcome.Right(account);
    }
    if (factors.acceptsRecovery(account.id(), code)) {
      failed.forget(counter);
      log.add(Kind.RECOVERY_CODE_USED, account.id(), from);
      return new Outcome.Right(account);
    }
    log.addFailure(Kind.SIGN_IN_FAILED, account.id(), from);
    return new Outcome.Wrong();
  }

  /** Judges what a device signed. Nobody guesses that: only the network is counted. */
  Outcome withPasskey(String signed, String browser, ClientAddress from) {
    if (!networkMay(from)) {
      log.addFailure(Kind.SIGN_IN_SLOWED, null, from);
      return new Outcome.Wait(Duration.ofMinutes(1));
    }
    try {
      Optional<Account> account = accounts.find(passkeys.signer(signed, browser));
      if (account.isPresent()) {
        return new Outcome.Right(account.get());
      }
    } catch (PasskeyCeremony.Refused e) {
      // Told below, like the passkey of a closed account.
    } catch (PasskeyCredentials.CountWentBack e) {
      log.add(Kind.PASSKEY_COUNT_WENT_BACK, null, e.person(), from, null);
      return new Outcome.Wrong();
    }
    log.addFailure(Kind.SIGN_IN_FAILED, null, from);
    return new Outcome.Wrong();
  }

  /** Whether somebody who is signed in has typed the own password; throttled like signing in. */
  boolean confirms(Account account, String password) {
    String counter = "confirm " + account.id();
    if (!failed.count(counter).isZero() || !hashing.matches(password, account.password())) {
      return false;
    }
    failed.forget(counter);
    return true;
  }

  private String counter(String key, Optional<Account> account, @Nullable String device) {
    boolean known = account.isPresent() && devices.isKnown(account.get().id(), device);
    return known ? "device " + device : "account " + key;
  }

  private Duration mayTry(String counter, ClientAddress from) {
    return networkMay(from) ? failed.count(counter) : Duration.ofMinutes(1);
  }

  private boolean networkMay(ClientAddress from) {
    return throttle.allows("sign-in", from.network(), PER_NETWORK, PER_NETWORK_PERIOD);
  }
}
