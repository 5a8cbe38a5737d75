package club.yearline.accounts;

import club.yearline.accounts.OneTimeLink.Kind;
import club.yearline.web.Refusal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Who belongs to the club, and as what. Each of these happens wholly or not at all. */
@Service
class Membership {

  private final Accounts accounts;
  private final Links links;
  private final SecondFactors factors;
  private final Passkeys passkeys;
  private final Devices devices;
  private final Sessions sessions;
  private final JoinRequests requests;
  private final SecurityLog log;
  private final ApplicationEventPublisher events;

  Membership(
      Accounts accounts,
      Links links,
      SecondFactors factors,
      Passkeys passkeys,
      Devices devices,
      Sessions sessions,
      JoinRequests requests,
      SecurityLog log,
      ApplicationEventPublisher events) {
    this.accounts = accounts;
    this.links = links;
    this.factors = factors;
    this.passkeys = passkeys;
    this.devices = devices;
    this.sessions = sessions;
    this.requests = requests;
    this.log = log;
    this.events = events;
  }

  /** What a new person says. The password is hashed already. */
  record Entrant(String name, EmailAddress email, String hash) {}

  /**
   * Makes whoever has the server's link a keeper: a new one, or the person whose address it is. No
   * other such link works afterwards.
   */
  @Transactional
  public long setUpKeeper(OneTimeLink link, Entrant entrant, ClientAddress from) {
    accounts.lockKeepers();
    links.use(link);
    links.revokeAll(Kind.SET_UP);
    Optional<Account> known = accounts.withEmail(entrant.email());
    long id = known.isPresent() ? known.get().id() : add(entrant, Role.KEEPER);
    if (known.isPresent()) {
      letIn(id, entrant.hash());
      factors.switchOff(id);
      passkeys.forgetAll(id);
      accounts.changeRole(id, Role.KEEPER);
    }
    log.add(SecurityEvent.Kind.KEEPER_SET_UP, id, from);
    return id;
  }

  /**
   * Lets a new member in by an invitation. Where the address has an account already, nothing
   * changes but that the invitation is spent: the answer is the same.
   */
  @Transactional
  public void join(OneTimeLink invitation, Entrant entrant, ClientAddress from) {
    links.use(invitation);
    if (accounts.withEmail(entrant.email()).isEmpty()) {
      long id = add(entrant, Role.MEMBER);
      log.add(SecurityEvent.Kind.JOINED, id, invitation.madeBy(), from, null);
    }
  }

  /** Sets a new password by a link; every session ends. */
  @Transactional
  public void reset(OneTimeLink link, Account account, String hash, ClientAddress from) {
    links.use(link);
    letIn(account.id(), hash);
    links.revokeFor(account.id());
    if (link.withoutSecondFactor()) {
      loseDevices(account, from);
    }
    log.add(SecurityEvent.Kind.PASSWORD_RESET, account.id(), from);
  }

  @Transactional
  public void changeRole(Actor keeper, Account account, Role role, ClientAddress from) {
    accounts.lockKeepers();
    if (role != Role.KEEPER) {
      keepAKeeper(account.id());
    }
    accounts.changeRole(account.id(), role);
    if (!role.atLeast(Role.MODERATOR)) {
      links.revokeFor(account.id());
    }
    log.add(SecurityEvent.Kind.ROLE_CHANGED, keeper.id(), account.id(), from, role.name());
  }

  /** Closes an account for good. Its contributions stay, behind a neutral name. */
  @Transactional
  public void close(Actor by, Account account, ClientAddress from) {
    accounts.lockKeepers();
    keepAKeeper(account.id());
    sessions.endAll(account.id());
    factors.switchOff(account.id());
    passkeys.forgetAll(account.id());
    devices.forgetAll(account.id());
    links.forget(account.id(), account.email());
    requests.forget(account.email());
    accounts.close(account.id());
    events.publishEvent(new AccountClosed(account.id()));
    log.add(SecurityEvent.Kind.ACCOUNT_CLOSED, by.id(), account.id(), from, null);
  }

  /** Confirms a new address by the link that was sent there. */
  @Transactional
  public void changeEmail(
      @Nullable OneTimeLink link, long person, EmailAddress email, ClientAddress from) {
    if (link != null) {
      links.use(link);
    }
    if (accounts.withEmail(email).filter(other -> other.id() != person).isEmpty()) {
      accounts.changeEmail(person, email);
      log.add(SecurityEvent.Kind.EMAIL_CHANGED, person, from);
    }
  }

  private void loseDevices(Account account, ClientAddress from) {
    if (account.hasSecondFactor()) {
      factors.switchOff(account.id());
      log.add(SecurityEvent.Kind.SECOND_FACTOR_OFF, account.id(), from);
    }
    if (!passkeys.of(account.id()).isEmpty()) {
      passkeys.forgetAll(account.id());
      log.add(SecurityEvent.Kind.PASSKEY_REMOVED, account.id(), from);
    }
  }

  private void letIn(long person, String hash) {
    accounts.changePassword(person, hash);
    sessions.endAll(person);
    devices.forgetAll(person);
  }

  private long add(Entrant entrant, Role role) {
    return accounts.add(entrant.name(), entrant.email(), entrant.hash(), role);
  }

  private void keepAKeeper(long leaving) {
    if (!accounts.hasKeeperBut(leaving)) {
      throw Refusal.of(HttpStatus.CONFLICT, "last-keeper");
    }
  }
}
