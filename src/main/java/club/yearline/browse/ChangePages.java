package club.yearline.browse;

import club.yearline.catalog.Links;
import club.yearline.catalog.Reading;
import club.yearline.effectivity.Change;
import club.yearline.web.Crumb;
import club.yearline.web.Refusal;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** One change record: where it cut in, on what evidence, and how the record came about. */
@Controller
class ChangePages {

  private final ChangeViews views;
  private final RecordTexts texts;

  ChangePages(ChangeViews views, RecordTexts texts) {
    this.views = views;
    this.texts = texts;
  }

  @GetMapping("/changes/{key}")
  String change(
      @PathVariable String key, Reading reading, HttpServletRequest request, Model model) {
    Change change =
        reading.catalogue().change(key).orElseThrow(() -> Refusal.notFound("unknown-change", key));
    ChangePage page = views.page(change, Links.of(reading, request));
    model.addAttribute("page", page);
    model.addAttribute(
        "trail",
        List.of(
            new Crumb(texts.get("crumb.home"), reading.link("/")),
            new Crumb(page.feature().name(), reading.link("/features/" + change.feature())),
            Crumb.here(change.title())));
    return "records/change";
  }
}
