package club.yearline.fleet;

import club.yearline.accounts.Actor;
import club.yearline.catalog.Links;
import club.yearline.catalog.Reading;
import club.yearline.catalog.Snapshots;
import club.yearline.fleet.FleetViews.Asked;
import club.yearline.web.Crumb;
import club.yearline.web.Phrases;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The register, one airframe of it, and what its owner decides about it. */
@Controller
class FleetPages {

  private final FleetViews fleet;
  private final AirframeViews views;
  private final Keeping keeping;
  private final Snapshots snapshots;
  private final Phrases phrases;

  FleetPages(
      FleetViews fleet,
      AirframeViews views,
      Keeping keeping,
      Snapshots snapshots,
      Phrases phrases) {
    this.fleet = fleet;
    this.views = views;
    this.keeping = keeping;
    this.snapshots = snapshots;
    this.phrases = phrases;
  }

  @GetMapping("/fleet")
  String fleet(
      @RequestParam(defaultValue = "") String of,
      @RequestParam(defaultValue = "") String differing,
      @RequestParam(defaultValue = "1") int page,
      Actor actor,
      HttpServletRequest request,
      Model model) {
    Asked asked = new Asked(request.getContextPath(), of, !differing.isEmpty(), page);
    model.addAttribute("fleet", fleet.list(actor, asked));
    return "fleet/fleet";
  }

  @GetMapping("/fleet/{id}")
  String airframe(@PathVariable long id, Actor actor, HttpServletRequest request, Model model) {
    Links links = Links.of(new Reading(snapshots.head(), null), request);
    AirframeView view = views.of(actor, keeping.visible(actor, id), links);
    model.addAttribute("airframe", view);
    model.addAttribute(
        "trail",
        List.of(new Crumb(phrases.of("fleet.title"), "/fleet"), Crumb.here(view.heading())));
    return "fleet/airframe";
  }

  @PostMapping("/fleet/{id}/share")
  String share(@PathVariable long id, @RequestParam boolean shared, Actor actor) {
    keeping.share(actor, id, shared);
    return to(id) + "#sharing";
  }

  @PostMapping("/fleet/{id}/serial")
  String showSerial(@PathVariable long id, @RequestParam boolean shown, Actor actor) {
    keeping.showSerial(actor, id, shown);
    return to(id) + "#sharing";
  }

  @GetMapping("/fleet/{id}/delete")
  String delete(@PathVariable long id, Actor actor, Model model) {
    Airframe airframe = keeping.own(actor, id);
    model.addAttribute("id", id);
    model.addAttribute(
        "heading", new Headings(snapshots.head().catalogue(), phrases).of(airframe.seenBy(actor)));
    model.addAttribute("goes", keeping.whatGoes(actor, id));
    return "fleet/delete";
  }

  @PostMapping("/fleet/{id}/delete")
  String deleteForGood(@PathVariable long id, Actor actor) {
    keeping.delete(actor, id);
    return "redirect:/fleet";
  }

  static String to(long id) {
    return "redirect:/fleet/" + id;
  }
}
