package club.yearline.inspection;

import club.yearline.web.Phrases;
import jakarta.servlet.http.HttpServletRequest;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Objects;
import org.springframework.stereotype.Component;
import org.springframework.web.util.UriComponentsBuilder;

/** What stands on the report of an inspection, on screen and on paper. */
@Component
class ReportWords {

  private final Phrases phrases;

  ReportWords(Phrases phrases) {
    this.phrases = phrases;
  }

  Map<String, Object> of(
      Inspecting.Outcome outcome, Inspecting.Made made, HttpServletRequest request) {
    int revision = outcome.addresses().links().reading().revision();
    String title = phrases.of("inspect.report.of", made.report().heading());
    return Map.of(
        "report", made.report(),
        "title", title,
        "revision", revision,
        "made", phrases.of("inspect.report.made", LocalDate.now(ZoneOffset.UTC), revision),
        "foot", phrases.of("inspect.report.sheet", made.report().heading(), revision),
        "address", address(outcome, made, request, revision));
  }

  /** The address of this inspection for ever, to be read from paper. */
  private static String address(
      Inspecting.Outcome outcome, Inspecting.Made made, HttpServletRequest request, int revision) {
    String page = outcome.addresses().page(made.inspection().claim());
    return UriComponentsBuilder.fromUriString(request.getRequestURL().toString())
        .replacePath(null)
        .build()
        .toUriString()
        .concat(Objects.requireNonNull(page))
        .concat(page.contains("rev=") ? "" : "&rev=" + revision);
  }
}
