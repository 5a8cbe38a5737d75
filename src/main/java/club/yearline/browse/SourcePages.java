package club.yearline.browse;

import club.yearline.catalog.Links;
import club.yearline.catalog.Reading;
import club.yearline.citation.Source;
import club.yearline.effectivity.SourceEntry;
import club.yearline.web.Crumb;
import club.yearline.web.Refusal;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** The library of sources, and what each supports. */
@Controller
class SourcePages {

  private final SourceViews views;
  private final RecordTexts texts;

  SourcePages(SourceViews views, RecordTexts texts) {
    this.views = views;
    this.texts = texts;
  }

  @GetMapping("/sources")
  String library(Reading reading, HttpServletRequest request, Model model) {
    model.addAttribute("lists", views.library(Links.of(reading, request)));
    model.addAttribute(
        "trail",
        List.of(
            new Crumb(texts.get("crumb.home"), reading.link("/")),
            Crumb.here(texts.get("sources"))));
    return "records/sources";
  }

  @GetMapping("/sources/{key}")
  String source(
      @PathVariable String key, Reading reading, HttpServletRequest request, Model model) {
    Source source =
        reading
            .catalogue()
            .source(key)
            .map(SourceEntry::source)
            .orElseThrow(() -> Refusal.notFound("unknown-source", key));
    model.addAttribute("page", views.page(source, Links.of(reading, request)));
    model.addAttribute(
        "trail",
        List.of(
            new Crumb(texts.get("crumb.home"), reading.link("/")),
            new Crumb(texts.get("sources"), reading.link("/sources")),
            Crumb.here(source.title())));
    return "records/source";
  }
}
