package club.yearline.fleet;

import club.yearline.accounts.DeskLink;
import club.yearline.accounts.Role;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What this module adds beside the name of who is signed in. */
@Configuration(proxyBeanMethods = false)
class FleetLinks {

  @Bean
  DeskLink fleetLink() {
    return new DeskLink("/fleet", "fleet.title", 5, Role.MEMBER);
  }
}
