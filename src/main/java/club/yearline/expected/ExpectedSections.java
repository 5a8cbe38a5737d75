package club.yearline.expected;

import club.yearline.web.Section;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the header links to here. */
@Configuration(proxyBeanMethods = false)
class ExpectedSections {

  @Bean
  Section expectedSection() {
    return new Section("/expected", "expected.section", 10);
  }

  @Bean
  Section differencesSection() {
    return new Section("/differences", "differences.section", 20);
  }
}
