package club.yearline.quiz;

import club.yearline.accounts.VisitorPace;
import club.yearline.catalog.Links;
import club.yearline.catalog.NamesPeople;
import club.yearline.catalog.Pictures;
import club.yearline.catalog.Reading;
import club.yearline.catalog.Snapshots;
import club.yearline.catalog.StoredPicture;
import club.yearline.effectivity.Picture;
import club.yearline.web.Caller;
import club.yearline.web.Phrases;
import club.yearline.web.Refusal;
import jakarta.servlet.http.HttpServletRequest;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/**
 * A quiz by its link: for anybody who has it, until its last day, also where the catalogue is
 * closed. It shows that quiz and its pictures, and leads nowhere that the reader may not go.
 */
@Controller
@NamesPeople
class QuizClassController {

  static final String PAGE = "/ground-school/quiz/class/";

  /** A whole class comes from one network. */
  private static final int VISITS_AN_HOUR = 600;

  private static final int PICTURES_AN_HOUR = 12_000;
  private static final int MISSES_AN_HOUR = 60;
  private static final int DAY_OF_PICTURES = 1;

  private final QuizLinks links;
  private final Snapshots snapshots;
  private final Quizzes quizzes;
  private final QuizViews views;
  private final Pictures pictures;
  private final VisitorPace pace;
  private final Phrases phrases;

  QuizClassController(
      QuizLinks links,
      Snapshots snapshots,
      Quizzes quizzes,
      QuizViews views,
      Pictures pictures,
      VisitorPace pace,
      Phrases phrases) {
    this.links = links;
    this.snapshots = snapshots;
    this.quizzes = quizzes;
    this.views = views;
    this.pictures = pictures;
    this.pace = pace;
    this.phrases = phrases;
  }

  @GetMapping(PAGE + "{token}")
  String take(
      @PathVariable String token,
      @RequestParam MultiValueMap<String, String> typed,
      HttpServletRequest request,
      Model model) {
    pace.count("quiz", request, VISITS_AN_HOUR);
    QuizLink link = find(token, request);
    Reading reading = new Reading(snapshots.at(link.revision()), link.revision());
    String here = request.getContextPath() + PAGE + token;
    Map<Integer, String> answers = typed.containsKey("done") ? Given.answers(typed) : null;
    Links open = mayRead(request) ? Links.of(reading, request) : null;
    Selection selection = selection(link, reading);
    model.addAttribute(
        "quiz", view(selection, reading, open, p -> here + "/pictures/" + p.sha256(), answers));
    model.addAttribute("asked", selection.count());
    model.addAttribute("fields", List.of());
    model.addAttribute("action", here);
    model.addAttribute("again", here);
    model.addAttribute("until", link.lastDay());
    model.addAttribute("revision", link.revision());
    return "quiz/take";
  }

  private QuizView view(
      Selection selection,
      Reading reading,
      @Nullable Links open,
      Function<Picture, String> pictures,
      @Nullable Map<Integer, String> answers) {
    return views.view(
        quizzes.of(reading.snapshot(), selection),
        selection,
        new QuizViews.Showing(reading.catalogue(), reading.revision(), open, pictures, answers));
  }

  /** Only what the quiz shows; anything else of the catalogue stays closed. */
  @GetMapping(PAGE + "{token}/pictures/{sha256}")
  ResponseEntity<byte[]> picture(
      @PathVariable String token, @PathVariable String sha256, HttpServletRequest request) {
    pace.count("quiz-picture", request, PICTURES_AN_HOUR);
    QuizLink link = find(token, request);
    Reading reading = new Reading(snapshots.at(link.revision()), link.revision());
    Set<String> shown = new HashSet<>();
    view(selection(link, reading), reading, null, p -> noted(p, shown), null);
    if (!shown.contains(sha256)) {
      throw Refusal.notFound("unknown-picture", sha256);
    }
    StoredPicture picture =
        pictures.find(sha256).orElseThrow(() -> Refusal.notFound("unknown-picture", sha256));
    return ResponseEntity.ok()
        .contentType(MediaType.parseMediaType(picture.mediaType()))
        .cacheControl(CacheControl.maxAge(Duration.ofDays(DAY_OF_PICTURES)).cachePrivate())
        .header("Content-Security-Policy", "default-src 'none'; style-src 'unsafe-inline'; sandbox")
        .header("X-Content-Type-Options", "nosniff")
        .body(picture.bytes());
  }

  private static String noted(Picture picture, Set<String> shown) {
    shown.add(picture.sha256());
    return picture.sha256();
  }

  private Selection selection(QuizLink link, Reading reading) {
    return new Choosing(link.given(), reading, phrases).selection().orElseThrow();
  }

  /** Misses are counted, so that nobody tries links out. */
  private QuizLink find(String token, HttpServletRequest request) {
    QuizLink link = links.find(token).orElse(null);
    if (link == null) {
      pace.count("quiz-miss", request, MISSES_AN_HOUR);
      throw Refusal.notFound("unknown-quiz-link");
    }
    if (link.isOver(QuizLinkController.today())) {
      throw Refusal.of(HttpStatus.GONE, "quiz-link-over", link.lastDay());
    }
    return link;
  }

  private static boolean mayRead(HttpServletRequest request) {
    return request.getAttribute(Caller.class.getName()) instanceof Caller caller
        && caller.mayRead();
  }
}
