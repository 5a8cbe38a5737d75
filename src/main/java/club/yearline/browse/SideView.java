package club.yearline.browse;

import club.yearline.catalog.Links;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Variant;
import java.util.Collection;
import java.util.Optional;

/**
 * The side view of a variant.
 *
 * @param href address of the picture
 * @param alt what it shows, in words
 */
record SideView(String href, String alt) {

  static Optional<SideView> of(Variant variant, Catalogue catalogue, Links links, Words words) {
    return Optional.ofNullable(variant.picture())
        .flatMap(catalogue::picture)
        .map(p -> new SideView(links.picture(p), words.say("side-view", variant.designation())));
  }

  /** That of the first variant that has one. */
  static Optional<SideView> ofAny(
      Collection<Variant> variants, Catalogue catalogue, Links links, Words words) {
    return variants.stream().flatMap(v -> of(v, catalogue, links, words).stream()).findFirst();
  }
}
