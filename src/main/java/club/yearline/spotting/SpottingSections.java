package club.yearline.spotting;

import club.yearline.web.Section;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the header links to here. */
@Configuration(proxyBeanMethods = false)
class SpottingSections {

  @Bean
  Section spotSection() {
    return new Section("/spot", "spot.section", 15);
  }
}
