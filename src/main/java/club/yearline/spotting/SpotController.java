package club.yearline.spotting;

import club.yearline.catalog.Chapters;
import club.yearline.catalog.Links;
import club.yearline.catalog.Reading;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Feature;
import club.yearline.web.Phrases;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** The page "what is this one": all it knows stands in its address. */
@Controller
class SpotController {

  private static final int BAD_REQUEST = 400;

  /** Sent by the script that swaps parts in place. */
  private static final String SWAPPING = "HX-Request";

  private final Wording wording;
  private final Phrases phrases;
  private final Chapters chapters;

  SpotController(Wording wording, Phrases phrases, Chapters chapters) {
    this.wording = wording;
    this.phrases = phrases;
    this.chapters = chapters;
  }

  @GetMapping("/spot")
  String spot(
      Reading reading, HttpServletRequest request, HttpServletResponse response, Model model) {
    Links links = Links.of(reading, request);
    SpotReading read = SpotReading.of(reading.catalogue(), request, phrases);
    if (read.faults().isEmpty() && isStep(request)) {
      return "redirect:" + reading.link(after(read.address(), request, reading.catalogue()).path());
    }
    if (!read.faults().isEmpty()) {
      response.setStatus(BAD_REQUEST);
    }
    response.addHeader(HttpHeaders.VARY, SWAPPING);
    model.addAttribute("title", phrases.of("spot.title"));
    model.addAttribute("rev", reading.asked());
    model.addAttribute("revision", reading.revision());
    model.addAttribute("faults", read.faults());
    model.addAttribute("swapping", request.getHeader(SWAPPING) != null);
    model.addAttribute("freshHref", links.at("/spot"));
    model.addAttribute(
        "view",
        new SpotViews(links, wording, phrases, chapters)
            .of(read.address(), request.getParameter("value")));
    return "spotting/spot";
  }

  /** Whether a form asks for a step, which ends at an address of its own. */
  private static boolean isStep(HttpServletRequest request) {
    return request.getParameter("drop") != null || request.getParameter("value") != null;
  }

  private static SpotAddress after(
      SpotAddress address, HttpServletRequest request, Catalogue catalogue) {
    Optional<Feature> dropped =
        Optional.ofNullable(request.getParameter("drop")).flatMap(catalogue::feature);
    return dropped.map(address::forgetting).orElse(address);
  }
}
