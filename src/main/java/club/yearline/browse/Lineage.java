package club.yearline.browse;

import club.yearline.catalog.Links;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Descent;
import club.yearline.effectivity.Variant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The neighbours of variants in the lineage. */
record Lineage(Catalogue catalogue, Links links, Words words) {

  /**
   * A neighbour.
   *
   * @param relation how the two relate, seen from the variant whose page it is
   * @param designation the neighbour
   * @param href its page
   * @param note what is recorded about it; empty where nothing is
   */
  record Kin(String relation, String designation, String href, String note) {}

  /** What a variant descends from. */
  List<Kin> before(Variant variant) {
    return variant.descent().stream()
        .flatMap(d -> catalogue.variant(d.from()).stream().map(v -> kin("from", d, v)))
        .toList();
  }

  /** What descends from a variant. */
  List<Kin> after(Variant variant) {
    return catalogue.records().variants().stream().flatMap(v -> after(variant, v)).toList();
  }

  private Stream<Kin> after(Variant older, Variant younger) {
    return younger.descent().stream()
        .filter(d -> d.from().equals(older.key()))
        .map(d -> kin("to", d, younger));
  }

  private Kin kin(String direction, Descent descent, Variant other) {
    return new Kin(
        words.say("lineage." + direction + "." + descent.relation().code()),
        other.designation(),
        links.variant(other.key()),
        Optional.ofNullable(descent.note()).orElse(""));
  }
}
