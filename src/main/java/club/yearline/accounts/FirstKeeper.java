package club.yearline.accounts;

import club.yearline.web.Phrases;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.env.Environment;
import org.springframework.stereotype.Component;

/** At the start of an installation that has no keeper yet: writes the link to become one. */
@Component
class FirstKeeper {

  private static final Logger log = LoggerFactory.getLogger(FirstKeeper.class);

  private final Accounts accounts;
  private final KeeperLink link;
  private final Addresses addresses;
  private final Phrases phrases;

  FirstKeeper(Accounts accounts, KeeperLink link, Addresses addresses, Phrases phrases) {
    this.accounts = accounts;
    this.link = link;
    this.addresses = addresses;
    this.phrases = phrases;
  }

  @EventListener
  void on(ApplicationReadyEvent event) {
    Environment environment = event.getApplicationContext().getEnvironment();
    // Only a server that listens has set its port.
    String port = environment.getProperty("local.server.port");
    if (port != null && !accounts.hasKeeper()) {
      String context = environment.getProperty("server.servlet.context-path", "");
      String server = addresses.isKnown() ? "" : "http://localhost:" + port + context;
      log.info(phrases.of("start.keeper", server + link.make()));
    }
  }
}
