package club.yearline.browse;

import club.yearline.catalog.Links;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Feature;
import club.yearline.web.Refusal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Which families of a feature a page shows. A feature that very many variants have is shown one
 * family at a time, so that the page stays light.
 *
 * @param lines the variants shown
 * @param links every family, where not all are shown; else empty
 */
record FamilyChoice(List<Line> lines, List<Link> links) {

  /** How many variants are shown together. */
  static final int MOST = 24;

  /**
   * A family to choose.
   *
   * @param name its name
   * @param href the page with it alone
   * @param here whether it is the one shown
   */
  record Link(String name, String href, boolean here) {}

  static FamilyChoice of(List<Line> all, @Nullable String asked, Feature feature, Links links) {
    if (asked == null && all.size() <= MOST) {
      return new FamilyChoice(all, List.of());
    }
    String shown = asked == null ? all.get(0).family().key() : asked;
    List<Line> lines = all.stream().filter(l -> l.family().key().equals(shown)).toList();
    if (lines.isEmpty()) {
      throw Refusal.notFound("feature-not-in-family", feature.name(), shown);
    }
    return new FamilyChoice(lines, links(all, shown, feature, links));
  }

  private static List<Link> links(List<Line> all, String shown, Feature feature, Links links) {
    List<Family> families = all.stream().map(Line::family).distinct().toList();
    return families.stream()
        .map(
            f ->
                new Link(
                    f.name(),
                    links.at("/features/" + feature.key() + "?family=" + f.key()),
                    f.key().equals(shown)))
        .toList();
  }
}
