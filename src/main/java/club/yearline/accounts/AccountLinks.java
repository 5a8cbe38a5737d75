package club.yearline.accounts;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What this module adds beside the name of who is signed in. */
@Configuration(proxyBeanMethods = false)
class AccountLinks {

  @Bean
  DeskLink accountLink() {
    return new DeskLink("/account", "account.link", 80, Role.MEMBER);
  }

  @Bean
  DeskLink adminLink() {
    return new DeskLink("/admin", "admin.link", 90, Role.KEEPER);
  }
}
