package club.yearline.expected;

import club.yearline.catalog.Chapters;
import club.yearline.catalog.Links;
import club.yearline.catalog.Reading;
import club.yearline.catalog.Snapshots;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Located;
import club.yearline.effectivity.Question;
import club.yearline.web.Phrases;
import club.yearline.web.Refusal;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The page "what should this one have": the form and its answer. */
@Controller
class ExpectedController {

  private static final String PAGE = "expected/expected";

  private final Chapters chapters;
  private final Wording wording;
  private final Phrases phrases;
  private final Snapshots snapshots;

  ExpectedController(Chapters chapters, Wording wording, Phrases phrases, Snapshots snapshots) {
    this.chapters = chapters;
    this.wording = wording;
    this.phrases = phrases;
    this.snapshots = snapshots;
  }

  @GetMapping("/expected")
  String expected(
      Asked asked,
      @RequestParam(defaultValue = "chapter") String order,
      Reading reading,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    Links links = Links.of(reading, request);
    if (asked.isFresh()) {
      return form(asked, links, null, model);
    }
    Question question = asked.question(reading.catalogue());
    Located located = reading.catalogue().locate(question);
    if (!asked.yearIsUnreadable() && located instanceof Located.Found found) {
      Sheet sheet = new Sheets(chapters, links, wording, phrases).of(found, order.equals("walk"));
      model.addAttribute("sheet", sheet);
      model.addAttribute("title", sheet.heading());
      return form(asked, links, found.position().variant().family(), model);
    }
    Troubles troubles = new Troubles(links, wording, phrases);
    Trouble trouble =
        asked.yearIsUnreadable()
            ? troubles.yearUnreadable(Objects.requireNonNull(asked.year()).strip())
            : troubles.of(located, question);
    response.setStatus(trouble.status());
    model.addAttribute("trouble", trouble);
    return form(asked, links, null, model);
  }

  /** A revision that there is not: the form again, at the newest one. */
  @ExceptionHandler(Refusal.class)
  String refused(
      Refusal refusal, HttpServletRequest request, HttpServletResponse response, Model model) {
    Reading newest = new Reading(snapshots.head(), null);
    response.setStatus(refusal.status().value());
    String key = "refusal." + refusal.code();
    Object[] arguments = refusal.arguments().toArray();
    model.addAttribute(
        "trouble",
        new Trouble(
            refusal.status().value(),
            "serial",
            phrases.of(key + ".detail", arguments),
            phrases.of(key + ".advice", arguments),
            List.of()));
    Asked asked =
        new Asked(
            request.getParameter("serial"),
            request.getParameter("variant"),
            request.getParameter("year"));
    return form(asked, Links.of(newest, request), null, model);
  }

  private String form(Asked asked, Links links, @Nullable String family, Model model) {
    Reading reading = links.reading();
    if (!model.containsAttribute("title")) {
      model.addAttribute("title", phrases.of("expected.title"));
    }
    model.addAttribute("revision", reading.revision());
    model.addAttribute("rev", reading.asked());
    model.addAttribute("asked", asked);
    model.addAttribute("menu", VariantMenu.of(reading.catalogue(), family));
    model.addAttribute("action", links.root() + "/expected");
    model.addAttribute("listHref", links.at("/expected/list"));
    model.addAttribute("formHref", links.at("/expected"));
    model.addAttribute("differencesHref", links.at("/differences"));
    return PAGE;
  }
}
