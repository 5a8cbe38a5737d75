package club.yearline.browse;

import club.yearline.catalog.Links;
import club.yearline.catalog.Reading;
import club.yearline.catalog.Revision;
import club.yearline.catalog.Snapshots;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Family;
import club.yearline.web.Crumb;
import club.yearline.web.Pages;
import club.yearline.web.Refusal;
import jakarta.servlet.http.HttpServletRequest;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The first page, and the list of all families. */
@Controller
class HomePage {

  private static final int CARDS = 12;
  private static final int PAGE = 48;
  private static final int LATEST = 5;

  private static final Comparator<Family> BY_NAME =
      Comparator.comparing(Family::maker, String.CASE_INSENSITIVE_ORDER)
          .thenComparing(Family::name, String.CASE_INSENSITIVE_ORDER)
          .thenComparing(Family::key);

  private final Snapshots snapshots;
  private final Words words;
  private final Wording wording;
  private volatile Latest latest = new Latest(0, List.of());

  HomePage(Snapshots snapshots, Words words, Wording wording) {
    this.snapshots = snapshots;
    this.words = words;
    this.wording = wording;
  }

  /** A published change of the catalogue. */
  record Issue(int number, String date, String note, String href) {}

  @GetMapping("/")
  String home(Reading reading, HttpServletRequest request, Model model) {
    Links links = Links.of(reading, request);
    List<Family> families = reading.catalogue().records().families();
    model.addAttribute("families", cards(reading, links, 0, CARDS));
    model.addAttribute("familiesHref", links.families());
    model.addAttribute("more", families.size() > CARDS ? families.size() : null);
    model.addAttribute("issues", issues(reading, links));
    model.addAttribute("revisionsHref", links.revisions());
    return "browse/home";
  }

  @GetMapping("/families")
  String families(
      Reading reading,
      @RequestParam(defaultValue = "1") int page,
      HttpServletRequest request,
      Model model) {
    Links links = Links.of(reading, request);
    int size = reading.catalogue().records().families().size();
    int count = Math.max(1, (size + PAGE - 1) / PAGE);
    if (page < 1 || page > count) {
      throw Refusal.notFound("no-such-page", page, count);
    }
    model.addAttribute("families", cards(reading, links, (page - 1) * PAGE, PAGE));
    model.addAttribute("size", words.count("families", size));
    model.addAttribute("pages", new Pages(links.families(), page, count));
    model.addAttribute(
        "trail",
        List.of(
            new Crumb(words.say("home"), reading.link("/")), Crumb.here(words.say("families"))));
    return "browse/families";
  }

  private List<FamilyCard> cards(Reading reading, Links links, int from, int count) {
    return reading.catalogue().records().families().stream()
        .sorted(BY_NAME)
        .skip(from)
        .limit(count)
        .map(f -> FamilyCard.of(f, reading.catalogue(), links, words, wording))
        .toList();
  }

  /** The latest revisions, up to the one that is read: a page at a revision never changes. */
  private List<Issue> issues(Reading reading, Links links) {
    return latest(reading.revision()).stream().map(r -> issue(r, links)).toList();
  }

  /** Kept until another revision is read, since they are the same until then. */
  private List<Revision> latest(int revision) {
    Latest known = latest;
    if (known.revision() != revision) {
      known =
          new Latest(
              revision,
              snapshots.revisions().stream()
                  .filter(r -> r.number() <= revision)
                  .limit(LATEST)
                  .toList());
      latest = known;
    }
    return known.revisions();
  }

  private record Latest(int revision, List<Revision> revisions) {}

  private static Issue issue(Revision revision, Links links) {
    String date = revision.publishedAt().atOffset(ZoneOffset.UTC).toLocalDate().toString();
    return new Issue(revision.number(), date, revision.note(), links.revision(revision.number()));
  }
}
