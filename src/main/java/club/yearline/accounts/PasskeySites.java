package club.yearline.accounts;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.core.env.Environment;
import org.springframework.stereotype.Component;

/**
 * Says for which site passkeys are made: that of the settings, else that of the public address,
 * else this computer. Never that of a request: whoever sends one names any host.
 */
@Component
class PasskeySites {

  private static final Logger log = LoggerFactory.getLogger(PasskeySites.class);

  private final Environment environment;
  private final boolean local;
  private final @Nullable PasskeySite configured;

  PasskeySites(
      Environment environment,
      @Value("${yearline.address:}") String address,
      @Value("${yearline.passkeys.site:}") String id,
      @Value("${yearline.passkeys.origins:}") List<String> origins) {
    this.environment = environment;
    this.local = address.isBlank() && id.isBlank() && origins.isEmpty();
    this.configured = local ? null : configured(address, id, origins);
  }

  /** The site; empty where its address is one for which no browser makes passkeys. */
  Optional<PasskeySite> site() {
    return local ? ownComputer() : Optional.ofNullable(configured);
  }

  /** What was set on purpose must be right; the public address serves other ends as well. */
  private static @Nullable PasskeySite configured(String address, String id, List<String> origins) {
    if (!id.isBlank() || !origins.isEmpty()) {
      Set<String> places = origins.isEmpty() ? Set.of(address) : Set.copyOf(origins);
      return new PasskeySite(id.isBlank() ? PasskeySite.at(address).id() : id.strip(), places);
    }
    try {
      return PasskeySite.at(address);
    } catch (IllegalArgumentException e) {
      log.info("Passkeys are off. {}", e.getMessage());
      return null;
    }
  }

  /** Only a server that listens has set its port. */
  private Optional<PasskeySite> ownComputer() {
    return Optional.ofNullable(environment.getProperty("local.server.port", Integer.class))
        .map(PasskeySite::local);
  }
}
