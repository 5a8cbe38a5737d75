package club.yearline.browse;

import club.yearline.browse.Between.Comparison;
import club.yearline.catalog.Contributors;
import club.yearline.catalog.NamesPeople;
import club.yearline.catalog.Reading;
import club.yearline.catalog.Revision;
import club.yearline.catalog.Snapshots;
import club.yearline.web.Crumb;
import club.yearline.web.Pages;
import club.yearline.web.Refusal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The published history: what each revision did, and any two compared. */
@Controller
@NamesPeople
class RevisionPages {

  private static final int ON_A_PAGE = 50;

  private final Snapshots snapshots;
  private final Between between;
  private final DifferenceViews views;
  private final RecordTexts texts;
  private final Contributors contributors;

  RevisionPages(
      Snapshots snapshots,
      Between between,
      DifferenceViews views,
      RecordTexts texts,
      Contributors contributors) {
    this.contributors = contributors;
    this.snapshots = snapshots;
    this.between = between;
    this.views = views;
    this.texts = texts;
  }

  @GetMapping("/revisions")
  String history(@RequestParam(defaultValue = "1") int page, Reading reading, Model model) {
    List<Revision> all = upTo(reading);
    int count = Math.max((all.size() + ON_A_PAGE - 1) / ON_A_PAGE, 1);
    int current = Math.min(Math.max(page, 1), count);
    model.addAttribute(
        "revisions",
        all.stream()
            .skip((long) (current - 1) * ON_A_PAGE)
            .limit(ON_A_PAGE)
            .map(r -> RevisionPage.of(r, contributors))
            .toList());
    model.addAttribute("pages", new Pages(reading.link("/revisions"), current, count));
    compareForm(null, null, reading, model);
    return framed("records/revisions", reading, model);
  }

  @GetMapping("/revisions/{number}")
  String revision(
      @PathVariable int number,
      @RequestParam(required = false) @Nullable String variant,
      @RequestParam(defaultValue = "1") int page,
      Reading reading,
      Model model) {
    int head = reading.revision();
    Revision revision =
        upTo(reading).stream()
            .filter(r -> r.number() == number)
            .findFirst()
            .orElseThrow(() -> Refusal.notFound("unknown-revision", number, head));
    Comparison comparison = between.revisions(number - 1, number);
    model.addAttribute("shown", RevisionPage.of(revision, contributors));
    model.addAttribute(
        "page", views.page(comparison, "?rev=" + number, "/revisions/" + number, variant, page));
    model.addAttribute("earlier", number == 1 ? null : "/revisions/" + (number - 1));
    model.addAttribute("later", number >= head ? null : "/revisions/" + (number + 1));
    compareForm(number - 1, head, reading, model);
    return framed(
        "records/revision", reading, model, Crumb.here(texts.get("revision.number", number)));
  }

  @GetMapping("/revisions/compare")
  String compare(
      @RequestParam(required = false) @Nullable Integer from,
      @RequestParam(required = false) @Nullable Integer to,
      @RequestParam(required = false) @Nullable String variant,
      @RequestParam(defaultValue = "1") int page,
      Reading reading,
      Model model) {
    if (from != null && to != null) {
      String address = "/revisions/compare?from=" + from + "&to=" + to;
      Comparison comparison = between.revisions(from, to);
      model.addAttribute("page", views.page(comparison, "?rev=" + to, address, variant, page));
    }
    compareForm(from, to, reading, model);
    return framed("records/compare", reading, model, Crumb.here(texts.get("revisions.compare")));
  }

  /** A page at a revision never changes again, so it knows of no later ones. */
  private List<Revision> upTo(Reading reading) {
    return snapshots.revisions().stream().filter(r -> r.number() <= reading.revision()).toList();
  }

  /** The form offers the newest revision and the one before it, unless others are asked for. */
  private static void compareForm(
      @Nullable Integer from, @Nullable Integer to, Reading reading, Model model) {
    int head = reading.revision();
    model.addAttribute("from", from == null ? Math.max(head - 1, 0) : from);
    model.addAttribute("to", to == null ? head : to);
  }

  private String framed(String view, Reading reading, Model model, Crumb... further) {
    List<Crumb> trail = new ArrayList<>();
    trail.add(new Crumb(texts.get("crumb.home"), reading.link("/")));
    String here = texts.get("revisions");
    trail.add(further.length == 0 ? Crumb.here(here) : new Crumb(here, reading.link("/revisions")));
    trail.addAll(List.of(further));
    model.addAttribute("trail", trail);
    return view;
  }
}
