package club.yearline.inspection;

import club.yearline.catalog.Reading;
import club.yearline.print.Paper;
import club.yearline.web.Phrases;
import jakarta.servlet.http.HttpServletRequest;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.util.UriComponentsBuilder;

/** An inspection on paper: as a page to print, and as PDF. */
@Controller
class ReportController {

  private final Inspecting inspecting;
  private final ReportPaper paper;
  private final Phrases phrases;

  ReportController(Inspecting inspecting, ReportPaper paper, Phrases phrases) {
    this.inspecting = inspecting;
    this.paper = paper;
    this.phrases = phrases;
  }

  @GetMapping("/inspect/report")
  String report(Reading reading, HttpServletRequest request, Model model) {
    Inspecting.Outcome outcome = inspecting.of(reading, request);
    Inspecting.Made made = outcome.made();
    if (made == null) {
      return again(reading, request);
    }
    model.addAllAttributes(words(outcome, made, request));
    model.addAttribute("rev", reading.asked());
    model.addAttribute("backHref", outcome.addresses().page(made.inspection().claim()));
    model.addAttribute("pdfHref", outcome.addresses().of("report.pdf", made.inspection().claim()));
    return "inspection/report";
  }

  @GetMapping("/inspect/report.pdf")
  Object pdf(
      @RequestParam(name = "paper", defaultValue = "") String sheet,
      Reading reading,
      HttpServletRequest request) {
    Inspecting.Outcome outcome = inspecting.of(reading, request);
    Inspecting.Made made = outcome.made();
    if (made == null) {
      return again(reading, request);
    }
    byte[] bytes = paper.pdf(words(outcome, made, request), List.of(), Paper.of(sheet));
    return ResponseEntity.ok()
        .contentType(MediaType.APPLICATION_PDF)
        .header(
            HttpHeaders.CONTENT_DISPOSITION,
            ContentDisposition.inline().filename("inspection.pdf").build().toString())
        .body(bytes);
  }

  /** A claim that points nowhere is mended on the page that says why. */
  private static String again(Reading reading, HttpServletRequest request) {
    String query = request.getQueryString();
    return "redirect:/inspect" + (query == null ? "" : "?" + query);
  }

  private Map<String, Object> words(
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
