package club.yearline.inspection;

import club.yearline.catalog.Reading;
import club.yearline.print.Paper;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** An inspection on paper: as a page to print, and as PDF. */
@Controller
class ReportController {

  private final Inspecting inspecting;
  private final ReportPaper paper;
  private final ReportWords words;

  ReportController(Inspecting inspecting, ReportPaper paper, ReportWords words) {
    this.inspecting = inspecting;
    this.paper = paper;
    this.words = words;
  }

  @GetMapping("/inspect/report")
  String report(Reading reading, HttpServletRequest request, Model model) {
    Inspecting.Outcome outcome = inspecting.of(reading, request);
    Inspecting.Made made = outcome.made();
    if (made == null) {
      return again(reading, request);
    }
    model.addAllAttributes(words.of(outcome, made, request));
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
    byte[] bytes = paper.pdf(words.of(outcome, made, request), List.of(), Paper.of(sheet));
    return file(bytes);
  }

  /** A PDF, to be looked at in the browser. */
  static ResponseEntity<byte[]> file(byte[] bytes) {
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
}
