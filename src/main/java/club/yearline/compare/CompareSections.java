package club.yearline.compare;

import club.yearline.web.Section;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the header links to here. */
@Configuration(proxyBeanMethods = false)
class CompareSections {

  @Bean
  Section compareSection() {
    return new Section("/compare", "compare.section", 25);
  }
}
