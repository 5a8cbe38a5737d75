package club.yearline.news;

import club.yearline.accounts.Actor;
import club.yearline.catalog.Snapshots;
import club.yearline.effectivity.Catalogue;
import club.yearline.web.Refusal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** What a person watches. */
@Controller
class WatchController {

  /** More than anybody reads about. */
  static final int MOST = 300;

  private final Watches watches;
  private final Snapshots snapshots;

  WatchController(Watches watches, Snapshots snapshots) {
    this.watches = watches;
    this.snapshots = snapshots;
  }

  /**
   * Something watched, as the list shows it.
   *
   * @param kind code of its kind
   * @param key its key
   * @param name its name
   * @param path its page; null where it was withdrawn
   */
  record Line(String kind, String key, String name, @Nullable String path) {

    static Line of(Watched watched, Catalogue catalogue) {
      return new Line(
          watched.kind().code(),
          watched.key(),
          watched.name(catalogue),
          watched.isIn(catalogue) ? watched.path() : null);
    }
  }

  @GetMapping("/watching")
  String list(Actor actor, Model model) {
    Catalogue catalogue = snapshots.head().catalogue();
    List<Line> lines =
        watches.of(actor.id()).stream().map(watched -> Line.of(watched, catalogue)).toList();
    model.addAttribute("lines", lines);
    return "news/watching";
  }

  @PostMapping("/watching")
  String watch(
      Actor actor,
      @RequestParam(defaultValue = "") String kind,
      @RequestParam(defaultValue = "") String key) {
    Watched watched = watched(kind, key);
    if (!watched.isIn(snapshots.head().catalogue())) {
      throw Refusal.notFound("unknown-" + kind, key);
    }
    if (watches.of(actor.id()).size() >= MOST) {
      throw Refusal.unprocessable("watching-too-much", MOST);
    }
    watches.add(actor.id(), watched);
    return "redirect:" + watched.path();
  }

  /** What was withdrawn meanwhile can be let go all the same. */
  @PostMapping("/watching/stop")
  String stop(
      Actor actor,
      @RequestParam(defaultValue = "") String kind,
      @RequestParam(defaultValue = "") String key,
      @RequestParam(defaultValue = "") String from) {
    Watched watched = watched(kind, key);
    watches.remove(actor.id(), watched);
    boolean back = from.equals("page") && watched.isIn(snapshots.head().catalogue());
    return "redirect:" + (back ? watched.path() : "/watching");
  }

  private static Watched watched(String kind, String key) {
    return Watched.Kind.of(kind)
        .map(known -> new Watched(known, key))
        .orElseThrow(() -> Refusal.notUnderstood("cannot-watch"));
  }
}
