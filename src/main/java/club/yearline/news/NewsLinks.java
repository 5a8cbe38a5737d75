package club.yearline.news;

import club.yearline.accounts.DeskLink;
import club.yearline.accounts.Role;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What this module adds beside the name of who is signed in. */
@Configuration(proxyBeanMethods = false)
class NewsLinks {

  @Bean
  DeskLink inboxLink() {
    return new DeskLink("/inbox", "news.inbox", 10, Role.MEMBER);
  }

  @Bean
  DeskLink watchingLink() {
    return new DeskLink("/watching", "news.watching", 20, Role.MEMBER);
  }
}
