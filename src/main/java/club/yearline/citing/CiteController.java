package club.yearline.citing;

import club.yearline.catalog.NamesPeople;
import club.yearline.catalog.Reading;
import club.yearline.citation.Reference;
import club.yearline.web.Crumb;
import club.yearline.web.Phrases;
import club.yearline.web.Refusal;
import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.util.UriComponentsBuilder;

/**
 * Cite this. The page names the day of reading and the club, both of which change without a
 * publication, so it is asked for anew each time.
 */
@Controller
@NamesPeople
class CiteController {

  private final Works works;
  private final Styles styles;
  private final Phrases phrases;

  CiteController(Works works, Styles styles, Phrases phrases) {
    this.works = works;
    this.styles = styles;
    this.phrases = phrases;
  }

  @GetMapping("/cite")
  String cite(
      @RequestParam(required = false) @Nullable String page,
      @RequestParam(required = false) @Nullable String rev,
      Reading reading,
      HttpServletRequest request,
      Model model) {
    PageAddress address = address(page);
    if (rev == null && address.revision() != null) {
      return "redirect:" + here(address, address.revision());
    }
    String files = request.getContextPath() + file(address, reading);
    List<CitationView> views = new ArrayList<>();
    works
        .source(address, reading)
        .ifPresent(source -> views.add(CitationView.of("source", source, styles, files)));
    Reference cited = works.page(address, reading, request);
    views.add(CitationView.of("page", cited, styles, files));
    model.addAttribute("views", views);
    model.addAttribute("cited", cited);
    model.addAttribute("back", request.getContextPath() + address.at(reading.revision()));
    model.addAttribute(
        "trail",
        List.of(
            new Crumb(phrases.of("citing.home"), reading.link("/")),
            new Crumb(cited.title(), address.at(reading.revision())),
            Crumb.here(phrases.of("citing.title"))));
    return "citing/cite";
  }

  @GetMapping("/cite/file")
  ResponseEntity<byte[]> file(
      @RequestParam(required = false) @Nullable String page,
      @RequestParam(defaultValue = "page") String of,
      @RequestParam(defaultValue = "csl-json") String format,
      Reading reading,
      HttpServletRequest request) {
    Format as = Format.of(format);
    Reference work = work(address(page), of, reading, request);
    ContentDisposition name =
        ContentDisposition.attachment().filename(as.fileName(work.id())).build();
    return ResponseEntity.ok()
        .header(HttpHeaders.CONTENT_TYPE, as.type())
        .header(HttpHeaders.CONTENT_DISPOSITION, name.toString())
        .header(HttpHeaders.CACHE_CONTROL, "no-cache, private")
        .body(as.write(work).getBytes(StandardCharsets.UTF_8));
  }

  private Reference work(
      PageAddress address, String of, Reading reading, HttpServletRequest request) {
    Optional<Reference> source = works.source(address, reading);
    return switch (of) {
      case "page" -> works.page(address, reading, request);
      case "source" -> source.orElseThrow(() -> PageAddress.refusal(address.text()));
      default -> throw Refusal.notUnderstood("citation-of", of).at("of");
    };
  }

  private static PageAddress address(@Nullable String page) {
    if (page == null || page.isBlank()) {
      throw Refusal.missing("page");
    }
    return PageAddress.read(page.strip());
  }

  private static String here(PageAddress address, String revision) {
    return link("/cite", address, revision);
  }

  private static String file(PageAddress address, Reading reading) {
    return link("/cite/file", address, "" + reading.revision());
  }

  private static String link(String path, PageAddress address, String revision) {
    return UriComponentsBuilder.fromPath(path)
        .queryParam("page", "{page}")
        .queryParam("rev", "{rev}")
        .encode()
        .buildAndExpand(address.text(), revision)
        .toUriString();
  }
}
