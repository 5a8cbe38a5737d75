package club.yearline.accounts;

import club.yearline.accounts.OneTimeLink.Kind;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * The link that makes whoever has it a keeper: for the first start, and for the day when no keeper
 * gets in any more. Only who runs the server can make one.
 */
@Component
public class KeeperLink {

  private final Links links;
  private final Accounts accounts;
  private final SecurityLog log;
  private final Addresses addresses;

  KeeperLink(Links links, Accounts accounts, SecurityLog log, Addresses addresses) {
    this.links = links;
    this.accounts = accounts;
    this.log = log;
    this.addresses = addresses;
  }

  /** Makes the link; earlier ones stop working. Its full address where that is known. */
  @Transactional
  public String make() {
    accounts.lockKeepers();
    links.revokeAll(Kind.SET_UP);
    log.add(SecurityEvent.Kind.KEEPER_LINK_MADE, null, null);
    return addresses.publicly(links.make(Kind.SET_UP, null, null, null));
  }
}
