package club.yearline.compare;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Position;
import club.yearline.web.Phrases;
import java.util.List;
import java.util.stream.Collectors;

/** Names of figures, variant-years and stretches, and why there is no figure. */
final class Words {

  private final Catalogue catalogue;
  private final Phrases phrases;

  Words(Catalogue catalogue, Phrases phrases) {
    this.catalogue = catalogue;
    this.phrases = phrases;
  }

  /** A figure as a heading: as the catalogue calls it, else as we do. */
  String heading(Figure figure) {
    return catalogue
        .feature(figure.key())
        .map(Feature::name)
        .orElseGet(() -> phrases.of("compare.heading." + figure.key()));
  }

  String heading(Derived derived) {
    return phrases.of("compare.heading." + derived.code());
  }

  /** What a term or a result of arithmetic is, within a line. */
  String term(String name) {
    return phrases.of("compare.term." + name);
  }

  /** A variant and a year. */
  String name(Position position) {
    return phrases.of("compare.variant-year", position.variant().designation(), position.year());
  }

  /** A stretch of serials. */
  String serials(Build.Serials serials) {
    return serials.first().equals(serials.last())
        ? serials.first()
        : phrases.of("compare.serials", serials.first(), serials.last());
  }

  /** Why a recorded figure cannot be used. */
  String missing(Missing missing) {
    return phrases.of("compare.missing." + missing.code());
  }

  /** That something cannot be worked out for lack of figures. */
  String without(List<Figure> missing) {
    return phrases.of(
        "compare.without",
        missing.stream()
            .map(f -> term(f.key()))
            .collect(Collectors.joining(phrases.of("compare.or"))));
  }
}
