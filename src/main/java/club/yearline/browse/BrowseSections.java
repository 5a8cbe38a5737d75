package club.yearline.browse;

import club.yearline.web.Section;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The header's links to the reading pages. */
@Configuration(proxyBeanMethods = false)
class BrowseSections {

  @Bean
  Section familiesSection() {
    return new Section("/families", "browse.families", 10);
  }
}
