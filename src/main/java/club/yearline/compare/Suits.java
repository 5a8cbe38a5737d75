package club.yearline.compare;

import club.yearline.catalog.Links;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Variant;
import club.yearline.web.Choice;
import club.yearline.web.Phrases;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What suits a trip, as shown.
 *
 * @param whose which variants were judged, or why none were; empty where there are none
 * @param rows the variants, best first
 * @param more how many rows were left out, in words; empty where none
 */
public record Suits(String whose, List<Judged> rows, String more) {

  /** More variants would make a page that nobody reads, and a question that takes too long. */
  private static final int MOST_VARIANTS = 100;

  private static final int MOST_ROWS = 100;

  /** Ranks the variants of the family that the address names, or of all. */
  static Suits of(
      Links links, Wording wording, Phrases phrases, Told told, Address address, Trip trip) {
    Catalogue catalogue = links.reading().catalogue();
    String among = address.trip().among();
    List<Variant> variants =
        TripForm.given(among) && among != null
            ? catalogue.variantsOf(among.strip())
            : catalogue.records().variants();
    if (variants.size() > MOST_VARIANTS) {
      return new Suits(
          phrases.of("compare.suits.too-many", variants.size(), MOST_VARIANTS), List.of(), "");
    }
    List<Ranked> ranked = new Ranking(catalogue, trip).of(variants);
    Verdicts verdicts = new Verdicts(phrases, new Words(catalogue, phrases), told);
    return new Suits(
        whose(variants, catalogue, phrases),
        ranked.stream()
            .limit(MOST_ROWS)
            .map(r -> judged(r, links, wording, phrases, verdicts, address))
            .toList(),
        ranked.size() > MOST_ROWS
            ? phrases.of("compare.suits.more", ranked.size() - MOST_ROWS)
            : "");
  }

  private static String whose(List<Variant> variants, Catalogue catalogue, Phrases phrases) {
    String families =
        variants.stream()
            .map(Variant::family)
            .distinct()
            .flatMap(f -> catalogue.family(f).stream())
            .map(Family::name)
            .collect(Collectors.joining(phrases.of("compare.comma")));
    return variants.isEmpty() ? "" : phrases.count("compare.suits.of", variants.size(), families);
  }

  private static Judged judged(
      Ranked ranked,
      Links links,
      Wording wording,
      Phrases phrases,
      Verdicts verdicts,
      Address address) {
    Chosen chosen = new Chosen(ranked.variant().key(), "" + ranked.firstYear());
    boolean room = address.chosen().size() < Choosing.MOST;
    Address side =
        room ? address.with(chosen) : new Address(List.of(chosen), address.units(), address.trip());
    String years = wording.range("" + ranked.firstYear(), "" + ranked.lastYear());
    return verdicts.brief(
        phrases.of("compare.variant-year", ranked.variant().designation(), years),
        side.link(links),
        ranked.flights());
  }

  /** The families to choose from, with all of them first. */
  static List<Choice> families(Catalogue catalogue, Phrases phrases) {
    return Stream.concat(
            Stream.of(new Choice("", phrases.of("compare.suits.all"))),
            catalogue.records().families().stream().map(f -> new Choice(f.key(), f.name())))
        .toList();
  }
}
