package club.yearline.corrections;

import club.yearline.accounts.Actor;
import club.yearline.catalog.EntryRef;
import club.yearline.catalog.UnknownRevision;
import club.yearline.effectivity.EntryKind;
import club.yearline.web.Choice;
import club.yearline.web.Phrases;
import club.yearline.web.Refusal;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The queue, and one correction with what its author and other members do with it. */
@Controller
class CorrectionPages {

  private final CorrectionViews views;
  private final Desk desk;
  private final CorrectionReading reading;
  private final Drafting drafting;
  private final Notes notes;
  private final Pace pace;
  private final Phrases phrases;

  CorrectionPages(
      CorrectionViews views,
      Desk desk,
      CorrectionReading reading,
      Drafting drafting,
      Notes notes,
      Pace pace,
      Phrases phrases) {
    this.views = views;
    this.desk = desk;
    this.reading = reading;
    this.drafting = drafting;
    this.notes = notes;
    this.pace = pace;
    this.phrases = phrases;
  }

  @GetMapping("/corrections")
  String queue(@RequestParam(defaultValue = "1") int page, Actor actor, Model model) {
    model.addAttribute("queue", views.queue(actor, page));
    model.addAttribute("kinds", kinds());
    return "corrections/queue";
  }

  @GetMapping("/corrections/{id}")
  String correction(
      @PathVariable long id,
      @RequestParam(required = false) @Nullable String variant,
      @RequestParam(defaultValue = "1") int page,
      Actor actor,
      Model model) {
    model.addAttribute("correction", views.of(actor, id, variant, page));
    model.addAttribute("token", UUID.randomUUID());
    model.addAttribute("kinds", kinds());
    return "corrections/correction";
  }

  @GetMapping("/corrections/of-revision/{revision}")
  String ofRevision(@PathVariable int revision, Actor actor) {
    return to(desk.ofRevision(actor, revision).id());
  }

  @PostMapping("/corrections/{id}/drop")
  String drop(
      @PathVariable long id,
      @RequestParam int version,
      @RequestParam String kind,
      @RequestParam String key,
      Actor actor) {
    drafting.drop(actor, id, version, new EntryRef(EntryForm.kind(kind), key));
    return to(id);
  }

  @PostMapping("/corrections/{id}/submit")
  String submit(
      @PathVariable long id,
      @RequestParam int version,
      @RequestParam(defaultValue = "") String note,
      Actor actor) {
    pace.submission(actor);
    drafting.submit(actor, id, version, notes.optional(note));
    return to(id);
  }

  @PostMapping("/corrections/{id}/withdraw")
  String withdraw(
      @PathVariable long id,
      @RequestParam int version,
      @RequestParam(defaultValue = "") String note,
      Actor actor) {
    drafting.withdraw(actor, id, version, notes.optional(note));
    return to(id);
  }

  @PostMapping("/corrections/{id}/remark")
  String remark(
      @PathVariable long id,
      @RequestParam(defaultValue = "") String note,
      @RequestParam String token,
      Actor actor) {
    pace.remark(actor);
    drafting.remark(actor, id, notes.required(note), reading.token(token));
    return to(id) + "#history";
  }

  @GetMapping("/corrections/undo")
  String undo(@RequestParam int revision, Actor actor, Model model) {
    model.addAttribute("number", revision);
    model.addAttribute("title", phrases.of("corrections.undo.title", revision));
    model.addAttribute("token", UUID.randomUUID());
    return "corrections/undo";
  }

  @PostMapping("/corrections/undo")
  String undo(@RequestParam int revision, @RequestParam String token, Actor actor) {
    String kept = reading.token(token);
    String title = phrases.of("corrections.undo.title", revision);
    try {
      return to(reading.once(actor, kept, () -> drafting.undo(actor, revision, title, kept)));
    } catch (UnknownRevision e) {
      throw Refusal.notFound("unknown-revision", revision, e.highest());
    }
  }

  private List<Choice> kinds() {
    return Arrays.stream(EntryKind.values())
        .map(k -> new Choice(k.code(), phrases.of("corrections.kind." + k.code())))
        .toList();
  }

  private static String to(long id) {
    return "redirect:/corrections/" + id;
  }
}
