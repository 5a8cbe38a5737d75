package club.yearline.browse;

import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Variant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A family among others.
 *
 * @param name its name
 * @param href its page
 * @param view a side view; null where none is recorded
 * @param variants how many variants, and their years
 * @param built how many airframes, where each run says so; else empty
 */
record FamilyCard(
    String name,
    String maker,
    String href,
    @Nullable SideView view,
    String variants,
    String built) {

  static FamilyCard of(
      Family family, Catalogue catalogue, Links links, Words words, Wording wording) {
    List<Variant> variants = catalogue.variantsOf(family.key());
    Production production = Production.of(variants);
    String years = production.span(wording);
    String count = words.count("variants", variants.size());
    return new FamilyCard(
        family.name(),
        family.maker(),
        links.family(family.key()),
        SideView.ofAny(variants, catalogue, links, words).orElse(null),
        years.isEmpty() ? count : words.say("variants.years", count, years),
        production.built().isPresent() ? words.count("built", production.built().getAsInt()) : "");
  }
}
