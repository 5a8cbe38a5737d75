package club.yearline.spotting;

import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Visibility;
import club.yearline.spotting.SpotView.Part;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.web.util.UriUtils;

/**
 * All that the page knows, as its address carries it. Immutable; each step makes another.
 *
 * @param family key of a family; empty for all; null where none was chosen
 * @param standing where the person stands
 * @param seen what was seen, in the order of the answers
 * @param skipped features of which the person cannot tell
 * @param asked the feature to ask about; null for the one that tells most
 */
record SpotAddress(
    @Nullable String family,
    Visibility standing,
    List<Seen> seen,
    List<Feature> skipped,
    @Nullable Feature asked) {

  /** Who says nothing stands beside the airframe. */
  static final Visibility USUAL = Visibility.CLOSE;

  SpotAddress {
    seen = List.copyOf(seen);
    skipped = List.copyOf(skipped);
  }

  SpotAddress seeing(Seen one) {
    return new SpotAddress(
        family, standing, with(without(seen, one.feature()), one), unskipped(one.feature()), null);
  }

  SpotAddress skipping(Feature feature) {
    return new SpotAddress(
        family, standing, without(seen, feature), with(unskipped(feature), feature), null);
  }

  SpotAddress forgetting(Feature feature) {
    return new SpotAddress(family, standing, without(seen, feature), unskipped(feature), null);
  }

  SpotAddress asking(@Nullable Feature feature) {
    return new SpotAddress(family, standing, seen, skipped, feature);
  }

  SpotAddress standingAt(Visibility place) {
    return new SpotAddress(family, place, seen, skipped, asked);
  }

  SpotAddress ofAllFamilies() {
    return new SpotAddress(null, standing, seen, skipped, asked);
  }

  /** Whether nothing was told yet. */
  boolean isFresh() {
    return seen.isEmpty() && skipped.isEmpty();
  }

  private static List<Seen> without(List<Seen> seen, Feature feature) {
    Predicate<Seen> other = s -> !s.feature().key().equals(feature.key());
    return seen.stream().filter(other).toList();
  }

  private List<Feature> unskipped(Feature feature) {
    return skipped.stream().filter(f -> !f.key().equals(feature.key())).toList();
  }

  private static <T> List<T> with(List<T> list, T last) {
    List<T> more = new ArrayList<>(list);
    more.add(last);
    return more;
  }

  /** The parts that a form sends along; a form that asks or answers adds its own. */
  List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    if (family != null) {
      parts.add(new Part("family", family));
    }
    if (standing != USUAL) {
      parts.add(new Part("visibility", standing.code()));
    }
    seen.forEach(s -> parts.add(new Part("o", s.code())));
    skipped.forEach(f -> parts.add(new Part("skip", f.key())));
    return parts;
  }

  /** The page's path with its query. */
  String path() {
    Stream<Part> ask = asked == null ? Stream.empty() : Stream.of(new Part("ask", asked.key()));
    return "/spot" + query(Stream.concat(parts().stream(), ask).toList());
  }

  /** Another page's path, with what was seen added to its query. */
  String carriedTo(String path) {
    String more = query(seen.stream().map(s -> new Part("o", s.code())).toList());
    return more.isEmpty() || path.indexOf('?') < 0 ? path + more : path + "&" + more.substring(1);
  }

  private static String query(List<Part> parts) {
    StringBuilder query = new StringBuilder();
    for (Part part : parts) {
      query.append(query.isEmpty() ? '?' : '&').append(part.name()).append('=');
      query.append(UriUtils.encode(part.value(), StandardCharsets.UTF_8).replace("%3A", ":"));
    }
    return query.toString();
  }
}
