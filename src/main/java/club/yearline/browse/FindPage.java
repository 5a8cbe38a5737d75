package club.yearline.browse;

import club.yearline.accounts.Actor;
import club.yearline.catalog.Closeness;
import club.yearline.catalog.Finder;
import club.yearline.catalog.Found;
import club.yearline.catalog.Links;
import club.yearline.catalog.Meaning;
import club.yearline.catalog.Reading;
import club.yearline.catalog.Wording;
import club.yearline.fleet.Register;
import club.yearline.fleet.Registered;
import club.yearline.web.Crumb;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.view.RedirectView;

/** What the one box leads to: straight to the answer where there is one, else a short list. */
@Controller
class FindPage {

  private final Register register;
  private final Words words;
  private final Wording wording;

  FindPage(Register register, Words words, Wording wording) {
    this.register = register;
    this.words = words;
    this.wording = wording;
  }

  @GetMapping("/find")
  ModelAndView find(
      @RequestParam(defaultValue = "") String q,
      Reading reading,
      @Nullable Actor actor,
      HttpServletRequest request) {
    String text = q.strip();
    Links links = Links.of(reading, request);
    if (text.isEmpty()) {
      return to(links.home());
    }
    if (text.length() > Finder.MAX_LENGTH) {
      ModelAndView refused = page(text, reading, links);
      refused.setStatus(HttpStatus.BAD_REQUEST);
      return refused.addObject(
          "fault", words.say("find.too-long", text.length(), Finder.MAX_LENGTH));
    }
    Found found = Finder.of(reading.catalogue()).find(text);
    FoundView view = new FoundView(found, reading.catalogue(), links, words, wording);
    List<Registered> marked = marked(actor, text, reading);
    if (marked.size() == 1 && !isExact(found)) {
      return to(view.href(marked.get(0)));
    }
    Optional<Meaning> only = found.only();
    if (only.isPresent() && marked.isEmpty()) {
      return to(view.href(only.get()));
    }
    return page(text, reading, links)
        .addObject("found", found)
        .addObject("marked", marked.isEmpty() ? null : view.group(marked))
        .addObject("groups", view.groups())
        .addObject("notes", marked.isEmpty() ? view.notes() : List.of());
  }

  /** Airframes of that mark that the reader may see. The register has no past to look at. */
  private List<Registered> marked(@Nullable Actor actor, String text, Reading reading) {
    return actor == null || reading.fixed() ? List.of() : register.marked(actor, text);
  }

  private static boolean isExact(Found found) {
    return found.hits().stream().anyMatch(h -> h.closeness() == Closeness.EXACT);
  }

  /** Sends the reader on; addresses carry the context path already. */
  private static ModelAndView to(String href) {
    return new ModelAndView(new RedirectView(href, false, true, false));
  }

  private ModelAndView page(String text, Reading reading, Links links) {
    ModelAndView page = new ModelAndView("browse/find");
    page.addObject("q", text);
    page.addObject("familiesHref", links.families());
    page.addObject(
        "trail",
        List.of(new Crumb(words.say("home"), reading.link("/")), Crumb.here(words.say("find"))));
    return page;
  }
}
