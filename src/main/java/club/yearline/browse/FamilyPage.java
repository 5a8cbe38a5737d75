package club.yearline.browse;

import club.yearline.catalog.Chapters;
import club.yearline.catalog.Links;
import club.yearline.catalog.Reading;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Family;
import club.yearline.web.Crumb;
import club.yearline.web.Refusal;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** A family at a glance. */
@Controller
class FamilyPage {

  private final Words words;
  private final Wording wording;
  private final Chapters chapters;

  FamilyPage(Words words, Wording wording, Chapters chapters) {
    this.words = words;
    this.wording = wording;
    this.chapters = chapters;
  }

  @GetMapping("/families/{key}")
  String family(
      @PathVariable String key, Reading reading, HttpServletRequest request, Model model) {
    Family family =
        reading.catalogue().family(key).orElseThrow(() -> Refusal.notFound("unknown-family", key));
    Links links = Links.of(reading, request);
    FamilyView view = new FamilyView(family, reading.catalogue(), links, words, wording);
    model.addAttribute("family", family);
    model.addAttribute("view", view);
    model.addAttribute("chart", new FamilyChart(view, words).draw());
    model.addAttribute("chapters", FamilyFeatures.of(view, chapters));
    model.addAttribute("series", view.series());
    model.addAttribute("citations", CitationLine.of(view.citations(), links));
    model.addAttribute(
        "trail",
        List.of(
            new Crumb(words.say("families"), reading.link("/families")),
            Crumb.here(family.name())));
    return "browse/family";
  }
}
