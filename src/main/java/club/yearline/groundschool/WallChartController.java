package club.yearline.groundschool;

import club.yearline.accounts.Addresses;
import club.yearline.catalog.Reading;
import club.yearline.effectivity.Family;
import club.yearline.print.Paper;
import club.yearline.print.PdfMaker;
import club.yearline.web.Phrases;
import club.yearline.web.Refusal;
import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.util.UriUtils;
import org.thymeleaf.context.Context;
import org.thymeleaf.spring6.SpringTemplateEngine;

/** Wall charts of a family: as SVG, and on A3 as PDF. */
@Controller
class WallChartController {

  private static final String NOTHING_RUNS =
      "default-src 'none'; style-src 'unsafe-inline'; sandbox";

  private final WallCharts charts;
  private final Drawings drawings;
  private final PdfMaker maker;
  private final SpringTemplateEngine templates;
  private final Addresses addresses;
  private final Phrases phrases;

  WallChartController(
      WallCharts charts,
      Drawings drawings,
      PdfMaker maker,
      SpringTemplateEngine templates,
      Addresses addresses,
      Phrases phrases) {
    this.charts = charts;
    this.drawings = drawings;
    this.maker = maker;
    this.templates = templates;
    this.addresses = addresses;
    this.phrases = phrases;
  }

  @GetMapping("/ground-school/wall-chart/{family}/svg")
  ResponseEntity<byte[]> svg(
      @PathVariable String family, Reading reading, HttpServletRequest request) {
    return file(family + ".svg", "image/svg+xml")
        .header("Content-Security-Policy", NOTHING_RUNS)
        .body(drawing(chart(family, reading, request), false));
  }

  @GetMapping("/ground-school/wall-chart/{family}/pdf")
  ResponseEntity<byte[]> pdf(
      @PathVariable String family, Reading reading, HttpServletRequest request) {
    WallChart chart = chart(family, reading, request);
    byte[] svg = drawing(chart, true);
    String html =
        templates.process(
            "groundschool/wall-chart-pdf", new Context(Locale.ENGLISH, Map.of("chart", chart)));
    return file(family + ".pdf", MediaType.APPLICATION_PDF_VALUE)
        .body(maker.make(html, Paper.A3, name -> Optional.of(svg)));
  }

  /** On paper the page around it names it. */
  private byte[] drawing(WallChart chart, boolean paper) {
    return drawings.svg("groundschool/wall-chart", Map.of("chart", chart, "paper", paper));
  }

  private static ResponseEntity.BodyBuilder file(String name, String type) {
    return ResponseEntity.ok()
        .contentType(MediaType.parseMediaType(type))
        .header(
            HttpHeaders.CONTENT_DISPOSITION,
            ContentDisposition.inline().filename(name, StandardCharsets.UTF_8).build().toString());
  }

  private WallChart chart(String key, Reading reading, HttpServletRequest request) {
    Family family =
        reading.catalogue().family(key).orElseThrow(() -> Refusal.notFound("unknown-family", key));
    String address =
        addresses.here(
            request,
            "/families/"
                + UriUtils.encodePathSegment(key, StandardCharsets.UTF_8)
                + "?rev="
                + reading.revision());
    String note =
        phrases.of(
            "school.wall.note",
            reading.revision(),
            reading.snapshot().revision().publishedAt().atZone(ZoneOffset.UTC).toLocalDate(),
            address);
    return charts
        .draw(family, reading, note)
        .orElseThrow(() -> Refusal.unprocessable("nothing-to-draw", family.name()));
  }
}
