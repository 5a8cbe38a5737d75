package club.yearline.corrections;

import club.yearline.accounts.Actor;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** What moderators decide. */
@Controller
class DecisionPages {

  private final Moderation moderation;
  private final Notes notes;

  DecisionPages(Moderation moderation, Notes notes) {
    this.moderation = moderation;
    this.notes = notes;
  }

  @PostMapping("/corrections/{id}/approve")
  String approve(
      @PathVariable long id,
      @RequestParam int version,
      @RequestParam int onto,
      @RequestParam(defaultValue = "") String note,
      Actor actor) {
    moderation.approve(actor, id, version, onto, notes.optional(note));
    return to(id);
  }

  @PostMapping("/corrections/{id}/send-back")
  String sendBack(
      @PathVariable long id,
      @RequestParam int version,
      @RequestParam(defaultValue = "") String note,
      Actor actor) {
    moderation.sendBack(actor, id, version, notes.required(note));
    return to(id);
  }

  @PostMapping("/corrections/{id}/reject")
  String reject(
      @PathVariable long id,
      @RequestParam int version,
      @RequestParam(defaultValue = "") String note,
      Actor actor) {
    moderation.reject(actor, id, version, notes.required(note));
    return to(id);
  }

  private static String to(long id) {
    return "redirect:/corrections/" + id;
  }
}
