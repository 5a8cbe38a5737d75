package club.yearline.browse;

import club.yearline.catalog.Links;
import club.yearline.catalog.Reading;
import club.yearline.effectivity.Feature;
import club.yearline.web.Crumb;
import club.yearline.web.Refusal;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** One feature: its values, its timeline over all variants, every change with its sources. */
@Controller
class FeaturePages {

  private final FeatureViews views;
  private final RecordTexts texts;

  FeaturePages(FeatureViews views, RecordTexts texts) {
    this.views = views;
    this.texts = texts;
  }

  @GetMapping("/features/{key}")
  String feature(
      @PathVariable String key,
      @RequestParam(required = false) @Nullable String family,
      Reading reading,
      HttpServletRequest request,
      Model model) {
    Feature feature =
        reading
            .catalogue()
            .feature(key)
            .orElseThrow(() -> Refusal.notFound("unknown-feature", key));
    model.addAttribute("page", views.page(feature, family, Links.of(reading, request)));
    model.addAttribute(
        "trail",
        List.of(new Crumb(texts.get("crumb.home"), reading.link("/")), Crumb.here(feature.name())));
    return "records/feature";
  }
}
