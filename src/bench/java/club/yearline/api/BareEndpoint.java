package club.yearline.api;

import club.yearline.catalog.Reading;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/**
 * What {@code /api/v1/expected} is measured against: the same framework, filters and writer, and a
 * record of the same size, but nothing to work out. It lies under the same path so that the same
 * filters apply.
 */
@RestController
class BareEndpoint {

  private final AnswerApi answers;
  private AnswerViews.@Nullable Expected constant;

  BareEndpoint(AnswerApi answers) {
    this.answers = answers;
  }

  /** Remembers a real answer, once, to be written ever after. */
  @GetMapping("/api/v1/bare/prepare")
  synchronized AnswerViews.Expected prepare(
      @RequestParam String serial, Reading reading, Locale locale) {
    AnswerViews.Expected taken = answers.expected(null, null, serial, false, reading, locale);
    constant = taken;
    return taken;
  }

  @GetMapping("/api/v1/bare")
  AnswerViews.Expected bare() {
    return Objects.requireNonNull(constant, "not prepared");
  }
}
