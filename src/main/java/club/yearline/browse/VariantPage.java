package club.yearline.browse;

import club.yearline.catalog.Links;
import club.yearline.catalog.Reading;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.VariantModel;
import club.yearline.web.Crumb;
import club.yearline.web.Refusal;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** A variant: its names, serials and figures, and what changed each year. */
@Controller
class VariantPage {

  private final Words words;
  private final Wording wording;

  VariantPage(Words words, Wording wording) {
    this.words = words;
    this.wording = wording;
  }

  @GetMapping("/variants/{key}")
  String variant(
      @PathVariable String key, Reading reading, HttpServletRequest request, Model model) {
    Catalogue catalogue = reading.catalogue();
    VariantModel variant =
        catalogue.model(key).orElseThrow(() -> Refusal.notFound("unknown-variant", key));
    Links links = Links.of(reading, request);
    Lineage lineage = new Lineage(catalogue, links, words);
    model.addAttribute("variant", variant.variant());
    model.addAttribute("family", variant.family());
    model.addAttribute("view", new VariantView(variant, catalogue, links, words, wording));
    model.addAttribute("blocks", new BlockTable(variant, catalogue, words, wording, links).rows());
    model.addAttribute("years", new YearlyChanges(variant, links, words, wording).newestFirst());
    model.addAttribute("before", lineage.before(variant.variant()));
    model.addAttribute("after", lineage.after(variant.variant()));
    model.addAttribute("citations", CitationLine.of(variant.variant().citations(), links));
    model.addAttribute("trail", trail(variant, reading));
    return "browse/variant";
  }

  private List<Crumb> trail(VariantModel variant, Reading reading) {
    return List.of(
        new Crumb(words.say("families"), reading.link("/families")),
        new Crumb(variant.family().name(), reading.link("/families/" + variant.family().key())),
        Crumb.here(variant.variant().designation()));
  }
}
