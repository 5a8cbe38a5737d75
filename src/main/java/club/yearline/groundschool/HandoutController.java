package club.yearline.groundschool;

import club.yearline.accounts.Actor;
import club.yearline.accounts.Addresses;
import club.yearline.catalog.Chapters;
import club.yearline.catalog.Links;
import club.yearline.catalog.Reading;
import club.yearline.effectivity.Family;
import club.yearline.print.Paper;
import club.yearline.web.Phrases;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The form that puts a hand-out together, and the hand-out as a page and as PDF. */
@Controller
class HandoutController {

  private final HandoutViews views;
  private final HandoutPaper paper;
  private final SavedHandouts saved;
  private final Chapters chapters;
  private final Addresses addresses;
  private final Phrases phrases;

  HandoutController(
      HandoutViews views,
      HandoutPaper paper,
      SavedHandouts saved,
      Chapters chapters,
      Addresses addresses,
      Phrases phrases) {
    this.views = views;
    this.paper = paper;
    this.saved = saved;
    this.chapters = chapters;
    this.addresses = addresses;
    this.phrases = phrases;
  }

  /** A feature in the chosen order, and where the form moves it. */
  record Place(String key, String name, @Nullable String earlier) {}

  @GetMapping("/ground-school")
  String builder(
      @RequestParam MultiValueMap<String, String> given,
      @Nullable Actor actor,
      Reading reading,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    Handout handout = Handout.of(given);
    Choosing choosing = new Choosing(handout, reading, phrases);
    boolean ready = choosing.chosen().isPresent();
    if (ready) {
      model.addAttribute("made", true);
      offer(handout, reading, HandoutLinks.of(request), model);
    } else if (!handout.isFresh()) {
      model.addAttribute("faults", choosing.faults());
      response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
    }
    return form(handout, given.getFirst("family"), actor, reading, model);
  }

  private void offer(Handout handout, Reading reading, HandoutLinks links, Model model) {
    List<Place> order = new ArrayList<>();
    for (String key : handout.features()) {
      int at = order.size();
      order.add(
          new Place(
              key,
              reading.catalogue().feature(key).orElseThrow().name(),
              at == 0 ? null : links.builder(handout.earlier(at), reading) + "#order"));
    }
    model.addAttribute("order", order);
    model.addAttribute("pageHref", links.page(handout, reading));
    model.addAttribute("a4Href", links.pdf(handout, reading.revision(), "a4"));
    model.addAttribute("letterHref", links.pdf(handout, reading.revision(), "letter"));
  }

  private String form(
      Handout handout,
      @Nullable String asked,
      @Nullable Actor actor,
      Reading reading,
      Model model) {
    Optional<Family> family = Builder.family(reading.catalogue(), asked, handout);
    model.addAttribute("handout", handout);
    model.addAttribute(
        "builder",
        family.map(f -> Builder.of(f, handout, reading.catalogue(), chapters)).orElse(null));
    model.addAttribute(
        "families", Builder.families(reading.catalogue(), family.map(Family::key).orElse(null)));
    model.addAttribute("savedOnes", actor == null ? List.of() : kept(actor));
    model.addAttribute("member", actor != null);
    if (!model.containsAttribute("faults")) {
      model.addAttribute("faults", Map.of());
    }
    return "groundschool/builder";
  }

  private List<SavedHandout.Line> kept(Actor actor) {
    String untitled = phrases.of("school.untitled");
    return saved.of(actor.id()).stream().map(s -> s.line(untitled)).toList();
  }

  @GetMapping("/ground-school/hand-out")
  String page(
      @RequestParam MultiValueMap<String, String> given,
      @Nullable Actor actor,
      Reading reading,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    Handout handout = Handout.of(given);
    Choosing choosing = new Choosing(handout, reading, phrases);
    Optional<Chosen> chosen = choosing.chosen();
    if (chosen.isEmpty()) {
      model.addAttribute("faults", choosing.faults());
      response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
      return form(handout, null, actor, reading, model);
    }
    HandoutLinks links = HandoutLinks.of(request);
    model.addAttribute("school", view(chosen.get(), reading, request));
    model.addAttribute("paper", false);
    model.addAttribute("editHref", links.builder(handout, reading));
    model.addAttribute("a4Href", links.pdf(handout, reading.revision(), "a4"));
    model.addAttribute("letterHref", links.pdf(handout, reading.revision(), "letter"));
    return "groundschool/hand-out";
  }

  @GetMapping("/ground-school/hand-out.pdf")
  Object pdf(
      @RequestParam MultiValueMap<String, String> given,
      @RequestParam(name = "paper", defaultValue = "a4") String sheet,
      Reading reading,
      HttpServletRequest request) {
    Handout handout = Handout.of(given);
    Optional<Chosen> chosen = new Choosing(handout, reading, phrases).chosen();
    if (chosen.isEmpty()) {
      return "redirect:" + reading.link("/ground-school?" + handout.query());
    }
    return ResponseEntity.ok()
        .contentType(MediaType.APPLICATION_PDF)
        .header(
            HttpHeaders.CONTENT_DISPOSITION,
            ContentDisposition.inline().filename("hand-out.pdf").build().toString())
        .body(paper.pdf(view(chosen.get(), reading, request), Paper.of(sheet)));
  }

  private HandoutView view(Chosen chosen, Reading reading, HttpServletRequest request) {
    Handout handout = chosen.handout();
    return views.view(
        chosen,
        HandoutLinks.permalink(handout, reading.revision(), addresses, request),
        HandoutLinks.permalink(handout.withoutRemarks(), reading.revision(), addresses, request),
        Links.of(reading, request));
  }
}
