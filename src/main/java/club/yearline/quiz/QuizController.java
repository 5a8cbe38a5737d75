package club.yearline.quiz;

import club.yearline.accounts.Actor;
import club.yearline.catalog.Links;
import club.yearline.catalog.Reading;
import club.yearline.web.Phrases;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.net.URI;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ThreadLocalRandom;
import org.jspecify.annotations.Nullable;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Quizzes: put together, taken on screen, or printed with their key. */
@Controller
class QuizController {

  static final String TAKE = "/ground-school/quiz/take";

  private static final int LEAST_DRAWN = 100_000;
  private static final int MOST_DRAWN = 1_000_000;

  private final Quizzes quizzes;
  private final QuizViews views;
  private final QuizPage page;
  private final Phrases phrases;

  QuizController(Quizzes quizzes, QuizViews views, QuizPage page, Phrases phrases) {
    this.quizzes = quizzes;
    this.views = views;
    this.page = page;
    this.phrases = phrases;
  }

  @GetMapping("/ground-school/quiz")
  String form(
      @RequestParam MultiValueMap<String, String> given,
      @Nullable Actor actor,
      Reading reading,
      Model model) {
    return page.form(Given.of(given), Map.of(), actor, reading, model);
  }

  /** The address of a quiz names its number and revision; one without is sent on to one with. */
  @GetMapping(TAKE)
  Object take(
      @RequestParam MultiValueMap<String, String> typed,
      @Nullable Actor actor,
      Reading reading,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    Given given = Given.of(typed);
    Choosing choosing = new Choosing(given, reading, phrases);
    Optional<Selection> selection = choosing.selection();
    if (selection.isEmpty()) {
      response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
      return page.form(given, choosing.faults(), actor, reading, model);
    }
    if (given.number().isEmpty() || !reading.fixed()) {
      return sentOn(given, reading, request);
    }
    boolean paper = typed.containsKey("paper");
    show(selection.get(), given, typed, paper, reading, request, model);
    model.addAttribute("member", actor != null);
    return paper ? "quiz/paper" : "quiz/take";
  }

  private static ResponseEntity<Void> sentOn(
      Given given, Reading reading, HttpServletRequest request) {
    Given numbered =
        given.number().isEmpty()
            ? given.withNumber(ThreadLocalRandom.current().nextInt(LEAST_DRAWN, MOST_DRAWN))
            : given;
    String to = address(numbered, reading.revision());
    return ResponseEntity.status(HttpStatus.SEE_OTHER)
        .location(URI.create(request.getContextPath() + to))
        .cacheControl(CacheControl.noStore())
        .build();
  }

  static String address(Given given, int revision) {
    return TAKE + "?" + given.query() + "&rev=" + revision;
  }

  private void show(
      Selection selection,
      Given given,
      MultiValueMap<String, String> typed,
      boolean paper,
      Reading reading,
      HttpServletRequest request,
      Model model) {
    Links links = Links.of(reading, request);
    boolean told = paper || typed.containsKey("done");
    Map<Integer, String> answers = told ? Given.answers(typed) : null;
    Quiz quiz = quizzes.of(reading.snapshot(), selection);
    String root = request.getContextPath();
    String here = root + address(given, reading.revision());
    model.addAttribute(
        "quiz",
        views.view(
            quiz,
            selection,
            new QuizViews.Showing(
                reading.catalogue(), reading.revision(), links, links::picture, answers)));
    model.addAttribute("asked", selection.count());
    model.addAttribute("fields", given.fields());
    model.addAttribute("action", root + TAKE);
    model.addAttribute("again", here);
    model.addAttribute("paperHref", here + "&paper=1");
    model.addAttribute("editHref", root + reading.link("/ground-school/quiz?" + given.query()));
    model.addAttribute(
        "anotherHref", root + address(given.withNumber(next(selection)), reading.revision()));
  }

  private static long next(Selection selection) {
    return selection.number() == Selection.HIGHEST_NUMBER ? 0 : selection.number() + 1;
  }
}
