package club.yearline.groundschool;

import club.yearline.accounts.Actor;
import club.yearline.catalog.ImpactOf;
import club.yearline.catalog.NamesPeople;
import club.yearline.catalog.Reading;
import club.yearline.catalog.Snapshots;
import club.yearline.catalog.Wording;
import club.yearline.web.Phrases;
import club.yearline.web.Refusal;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Kept hand-outs: at the revision they were made at, or brought up to date. */
@Controller
@NamesPeople
class KeptHandoutController {

  /** More than anybody teaches. */
  static final int MOST = 100;

  private final SavedHandouts saved;
  private final Snapshots snapshots;
  private final ImpactOf impacts;
  private final Wording wording;
  private final Phrases phrases;

  KeptHandoutController(
      SavedHandouts saved,
      Snapshots snapshots,
      ImpactOf impacts,
      Wording wording,
      Phrases phrases) {
    this.saved = saved;
    this.snapshots = snapshots;
    this.impacts = impacts;
    this.wording = wording;
    this.phrases = phrases;
  }

  @PostMapping("/ground-school/saved")
  String save(Actor actor, @RequestParam MultiValueMap<String, String> given, Reading reading) {
    Handout handout = Handout.of(given);
    Choosing choosing = new Choosing(handout, reading, phrases);
    if (choosing.chosen().isEmpty()) {
      throw unusable(choosing);
    }
    if (saved.of(actor.id()).size() >= MOST) {
      throw Refusal.unprocessable("hand-outs-too-many", MOST);
    }
    return "redirect:/ground-school/saved/" + saved.add(actor.id(), handout, reading.revision());
  }

  private static Refusal unusable(Choosing choosing) {
    Refusal refusal = Refusal.unprocessable("hand-out-unusable");
    for (var fault : choosing.faults().entrySet()) {
      refusal = refusal.at(fault.getKey(), "school.fault.is", fault.getValue());
    }
    return refusal;
  }

  @GetMapping("/ground-school/saved/{id}")
  String open(Actor actor, @PathVariable String id, HttpServletRequest request, Model model) {
    SavedHandout handout = find(id, actor);
    Reading then = new Reading(snapshots.at(handout.revision()), handout.revision());
    Reading now = new Reading(snapshots.head(), null);
    HandoutLinks links = HandoutLinks.of(request);
    Choosing today = new Choosing(handout.choice(), now, phrases);
    Optional<Chosen> chosen = new Choosing(handout.choice(), then, phrases).chosen();
    model.addAttribute("handout", handout.line(phrases.of("school.untitled")));
    model.addAttribute("newest", now.revision());
    model.addAttribute("asSaved", links.page(handout.choice(), handout.revision()));
    model.addAttribute("pdfHref", links.pdf(handout.choice(), handout.revision(), "a4"));
    model.addAttribute("editHref", links.builder(handout.choice(), now));
    model.addAttribute("upToDate", links.page(handout.choice(), now.revision()));
    model.addAttribute("usable", today.chosen().isPresent());
    model.addAttribute("faults", today.faults());
    model.addAttribute("lines", chosen.map(c -> lines(c, then, now)).orElseGet(List::of));
    return "groundschool/saved";
  }

  private List<Moved.Line> lines(Chosen chosen, Reading then, Reading now) {
    return then.revision() == now.revision()
        ? List.of()
        : new Moved(wording, phrases)
            .lines(impacts.between(then.catalogue(), now.catalogue()), chosen);
  }

  /** What was looked at is named, so that nobody takes over what nobody has seen. */
  @PostMapping("/ground-school/saved/{id}/renew")
  String renew(Actor actor, @PathVariable String id, @RequestParam(defaultValue = "0") int to) {
    SavedHandout handout = find(id, actor);
    Reading now = new Reading(snapshots.head(), null);
    if (to != now.revision()) {
      throw Refusal.unprocessable("hand-out-moved", now.revision());
    }
    Choosing choosing = new Choosing(handout.choice(), now, phrases);
    if (choosing.chosen().isEmpty()) {
      throw unusable(choosing);
    }
    saved.renew(handout, handout.choice(), to);
    return "redirect:/ground-school/saved/" + handout.id();
  }

  @PostMapping("/ground-school/saved/{id}/delete")
  String delete(Actor actor, @PathVariable String id) {
    saved.remove(find(id, actor).id(), actor.id());
    return "redirect:/ground-school#kept";
  }

  private SavedHandout find(String id, Actor actor) {
    return (id.matches("[0-9]{1,18}")
            ? saved.find(Long.parseLong(id), actor.id())
            : Optional.<SavedHandout>empty())
        .orElseThrow(() -> Refusal.notFound("unknown-hand-out", id));
  }
}
