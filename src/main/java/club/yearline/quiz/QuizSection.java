package club.yearline.quiz;

import club.yearline.web.Section;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The header's link to the quiz. */
@Configuration(proxyBeanMethods = false)
class QuizSection {

  @Bean
  Section quiz() {
    return new Section("/ground-school/quiz", "quiz.title", 62);
  }
}
