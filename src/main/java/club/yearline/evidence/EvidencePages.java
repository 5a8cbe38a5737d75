package club.yearline.evidence;

import club.yearline.accounts.Actor;
import club.yearline.catalog.Links;
import club.yearline.catalog.NamesPeople;
import club.yearline.catalog.Reading;
import club.yearline.effectivity.Change;
import club.yearline.evidence.EvidenceViews.Typed;
import club.yearline.web.Crumb;
import club.yearline.web.Phrases;
import club.yearline.web.Refusal;
import jakarta.servlet.http.HttpServletRequest;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/**
 * What the register says about a change, at an address of its own: a change's page never changes at
 * a revision, but what is observed has no revisions, and an owner may take back the serial that is
 * shown.
 */
@Controller
@NamesPeople
class EvidencePages {

  private final EvidenceViews views;
  private final Phrases phrases;

  EvidencePages(EvidenceViews views, Phrases phrases) {
    this.views = views;
    this.phrases = phrases;
  }

  @GetMapping("/changes/{key}/evidence")
  String evidence(
      @PathVariable String key,
      @RequestParam(required = false) @Nullable String variant,
      @RequestParam(required = false) @Nullable String series,
      @RequestParam(required = false) @Nullable String lo,
      @RequestParam(required = false) @Nullable String hi,
      Reading reading,
      @Nullable Actor actor,
      HttpServletRequest request,
      Model model) {
    Change change =
        reading.catalogue().change(key).orElseThrow(() -> Refusal.notFound("unknown-change", key));
    Typed typed = new Typed(variant, series, lo, hi);
    // Visitors, and whoever reads a revision that others may cite, are told numbers only.
    boolean named = actor != null && !reading.fixed();
    model.addAttribute("named", named);
    model.addAttribute("page", views.page(change, typed, Links.of(reading, request), named));
    model.addAttribute("today", LocalDate.now(ZoneOffset.UTC).toString());
    model.addAttribute("token", UUID.randomUUID());
    model.addAttribute(
        "trail",
        List.of(
            new Crumb(phrases.of("records.crumb.home"), reading.link("/")),
            new Crumb(change.title(), reading.link("/changes/" + key)),
            Crumb.here(phrases.of("evidence.title"))));
    return "evidence/evidence";
  }
}
