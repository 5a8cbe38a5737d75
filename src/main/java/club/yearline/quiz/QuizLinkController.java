package club.yearline.quiz;

import club.yearline.accounts.Actor;
import club.yearline.accounts.Addresses;
import club.yearline.catalog.NamesPeople;
import club.yearline.catalog.Reading;
import club.yearline.web.Phrases;
import club.yearline.web.Refusal;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Links by which a class takes a quiz: made and taken away by members. */
@Controller
@NamesPeople
class QuizLinkController {

  static final int MOST_LINKS = 100;
  static final int MOST_DAYS = 366;

  private final QuizLinks links;
  private final QuizPage page;
  private final Addresses addresses;
  private final Phrases phrases;

  QuizLinkController(QuizLinks links, QuizPage page, Addresses addresses, Phrases phrases) {
    this.links = links;
    this.page = page;
    this.addresses = addresses;
    this.phrases = phrases;
  }

  /** The link is shown in this answer and nowhere else. */
  @PostMapping("/ground-school/quiz/links")
  String make(
      Actor actor,
      @RequestParam MultiValueMap<String, String> typed,
      Reading reading,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    Given given = Given.of(typed);
    Choosing choosing = new Choosing(given, reading, phrases);
    if (choosing.selection().isEmpty() || given.number().isEmpty()) {
      response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
      return page.form(given, faults(choosing), actor, reading, model);
    }
    model.addAttribute("fields", given.fields());
    model.addAttribute(
        "quizHref", request.getContextPath() + QuizController.address(given, reading.revision()));
    String until = typed.getFirst("until");
    Optional<LocalDate> day = day(until == null ? "" : until.strip());
    if (day.isEmpty()) {
      response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
      String fault = phrases.of("quiz.fault.no-day", today(), today().plusDays(MOST_DAYS));
      model.addAttribute("faults", Map.of("until", fault));
      return "quiz/link";
    }
    if (links.of(actor.id()).size() >= MOST_LINKS) {
      throw Refusal.unprocessable("quiz-links-too-many", MOST_LINKS);
    }
    String secret = links.add(actor.id(), given, reading.revision(), day.get());
    model.addAttribute("link", addresses.here(request, QuizClassController.PAGE + secret));
    model.addAttribute("until", day.get());
    model.addAttribute("faults", Map.of());
    return "quiz/link";
  }

  private Map<String, String> faults(Choosing choosing) {
    return choosing.faults().isEmpty()
        ? Map.of("number", phrases.of("quiz.fault.number-missing"))
        : choosing.faults();
  }

  private static Optional<LocalDate> day(String typed) {
    try {
      return Optional.of(LocalDate.parse(typed))
          .filter(d -> !d.isBefore(today()) && !d.isAfter(today().plusDays(MOST_DAYS)));
    } catch (DateTimeException e) {
      // Whatever is no date is told in the same words as a date out of bounds.
      return Optional.empty();
    }
  }

  static LocalDate today() {
    return LocalDate.now(ZoneOffset.UTC);
  }

  @PostMapping("/ground-school/quiz/links/{id}/revoke")
  String revoke(Actor actor, @PathVariable String id) {
    if (!id.matches("[0-9]{1,18}") || !links.remove(Long.parseLong(id), actor.id())) {
      throw Refusal.notFound("unknown-quiz-link");
    }
    return "redirect:/ground-school/quiz#classes";
  }
}
