package club.yearline.expected;

import club.yearline.catalog.Links;
import club.yearline.catalog.Reading;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Feature;
import club.yearline.web.Phrases;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** A pasted list of serials as a table. */
@Controller
class ListController {

  private static final int BAD_REQUEST = 400;

  private final Wording wording;
  private final Phrases phrases;

  ListController(Wording wording, Phrases phrases) {
    this.wording = wording;
    this.phrases = phrases;
  }

  /**
   * A feature that may be shown as a column.
   *
   * @param id of its box
   * @param key what the form sends
   * @param name as shown
   * @param chosen whether it is shown
   */
  record Column(String id, String key, String name, boolean chosen) {}

  @GetMapping("/expected/list")
  String list(
      @RequestParam @Nullable String serials,
      @RequestParam(defaultValue = "") List<String> feature,
      Reading reading,
      HttpServletRequest request,
      HttpServletResponse response,
      Model model) {
    Links links = Links.of(reading, request);
    model.addAttribute("rev", reading.asked());
    model.addAttribute("serials", serials == null ? "" : serials);
    model.addAttribute("action", links.root() + "/expected/list");
    model.addAttribute("expectedHref", links.at("/expected"));
    if (serials != null) {
      String fault = answer(SerialList.split(serials), feature, links, model);
      model.addAttribute("fault", fault);
      response.setStatus(fault == null ? response.getStatus() : BAD_REQUEST);
    }
    return "expected/list";
  }

  /** Puts the table into the model, or says why there is none. */
  private @Nullable String answer(
      List<String> typed, List<String> feature, Links links, Model model) {
    if (typed.isEmpty()) {
      return phrases.of("expected.list.empty");
    }
    if (typed.size() > SerialList.MOST) {
      return phrases.of("expected.list.too-long", typed.size(), SerialList.MOST);
    }
    List<String> columns = feature.stream().filter(f -> !f.isBlank()).distinct().toList();
    if (columns.size() > SerialList.MOST_FEATURES) {
      return phrases.of("expected.list.too-wide", columns.size(), SerialList.MOST_FEATURES);
    }
    SerialList list = new SerialList(links, wording, phrases, columns);
    List<SerialList.Entry> entries = list.of(typed);
    model.addAttribute("entries", entries);
    model.addAttribute("columns", list.columns().stream().map(Feature::name).toList());
    model.addAttribute(
        "choices",
        list.features().stream()
            .map(f -> new Column("pick-" + f.key(), f.key(), f.name(), columns.contains(f.key())))
            .toList());
    model.addAttribute("summary", summary(entries));
    return null;
  }

  private String summary(List<SerialList.Entry> entries) {
    long problems = entries.stream().filter(e -> e.problem() != null).count();
    long repeated = entries.stream().filter(e -> e.repeats() != null).count();
    return phrases.of("expected.list.summary", entries.size(), problems, repeated);
  }
}
