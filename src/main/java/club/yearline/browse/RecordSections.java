package club.yearline.browse;

import club.yearline.web.Section;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The sections of the header that lead to pages about records. */
@Configuration(proxyBeanMethods = false)
class RecordSections {

  @Bean
  Section sourcesSection() {
    return new Section("/sources", "records.sources", 70);
  }

  @Bean
  Section revisionsSection() {
    return new Section("/revisions", "records.revisions", 80);
  }
}
