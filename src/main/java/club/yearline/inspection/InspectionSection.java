package club.yearline.inspection;

import club.yearline.web.Section;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the header links to here. */
@Configuration(proxyBeanMethods = false)
class InspectionSection {

  @Bean
  Section inspectSection() {
    return new Section("/inspect", "inspect.section", 40);
  }
}
