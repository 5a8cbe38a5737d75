package club.yearline.groundschool;

import club.yearline.web.Section;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The header's link to ground school. */
@Configuration(proxyBeanMethods = false)
class GroundSchoolSection {

  @Bean
  Section groundSchool() {
    return new Section("/ground-school", "school.title", 60);
  }
}
