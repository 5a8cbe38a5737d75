package club.yearline.quiz;

import club.yearline.accounts.Actor;
import club.yearline.catalog.Chapters;
import club.yearline.catalog.Reading;
import club.yearline.effectivity.Family;
import club.yearline.web.Phrases;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** The form that puts a quiz together, with a member's links. */
@Component
class QuizPage {

  private static final String USUAL_COUNT = "10";

  private final QuizLinks links;
  private final Chapters chapters;
  private final Phrases phrases;

  QuizPage(QuizLinks links, Chapters chapters, Phrases phrases) {
    this.links = links;
    this.chapters = chapters;
    this.phrases = phrases;
  }

  String form(
      Given given,
      Map<String, String> faults,
      @Nullable Actor actor,
      Reading reading,
      Model model) {
    Optional<Family> family = QuizForm.family(reading.catalogue(), given.family());
    model.addAttribute("faults", faults);
    model.addAttribute("typed", given);
    model.addAttribute("count", given.count().isEmpty() ? USUAL_COUNT : given.count());
    model.addAttribute(
        "form",
        family
            .map(f -> QuizForm.of(f, given, reading.catalogue(), chapters, phrases))
            .orElse(null));
    model.addAttribute(
        "families", QuizForm.families(reading.catalogue(), family.map(Family::key).orElse("")));
    model.addAttribute("classes", actor == null ? List.of() : links.of(actor.id()));
    return "quiz/form";
  }
}
