package club.yearline.browse;

import club.yearline.catalog.Links;
import club.yearline.citation.Citation;
import club.yearline.citation.Source;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.SourceEntry;
import club.yearline.effectivity.Variant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What one source says for or against an entry.
 *
 * @param title title of the source
 * @param href page of the source
 * @param kind code of its kind
 * @param locators where in it, each place once; empty where none is recorded
 * @param supports whether it speaks for the entry
 * @param variant designation of the variant whose cut-in alone it bears on
 * @param notes what is said about it; empty where nothing is
 */
record CitationLine(
    String title,
    String href,
    String kind,
    String locators,
    boolean supports,
    @Nullable String variant,
    String notes) {

  private static final Comparator<List<Citation>> FOR_BEFORE_AGAINST =
      Comparator.comparing(same -> !same.get(0).supports());

  /** A line for each source, stance and variant: those in favour first, best evidence first. */
  static List<CitationLine> of(List<Citation> citations, Links links) {
    Catalogue catalogue = links.reading().catalogue();
    Map<List<?>, List<Citation>> bySource =
        citations.stream()
            .collect(
                Collectors.groupingBy(
                    c -> Stream.of(c.source(), c.supports(), c.variant()).toList(),
                    LinkedHashMap::new,
                    Collectors.toList()));
    return bySource.values().stream()
        .sorted(FOR_BEFORE_AGAINST.thenComparing(same -> source(same, catalogue).kind().grade()))
        .map(same -> line(same, links))
        .toList();
  }

  private static CitationLine line(List<Citation> same, Links links) {
    Catalogue catalogue = links.reading().catalogue();
    Source source = source(same, catalogue);
    String only = same.get(0).variant();
    return new CitationLine(
        source.title(),
        links.source(source.key()),
        source.kind().code(),
        joined(same.stream().map(Citation::locator)),
        same.get(0).supports(),
        only == null ? null : catalogue.variant(only).map(Variant::designation).orElse(only),
        joined(same.stream().map(Citation::note)));
  }

  private static Source source(List<Citation> same, Catalogue catalogue) {
    return catalogue.source(same.get(0).source()).map(SourceEntry::source).orElseThrow();
  }

  private static String joined(Stream<@Nullable String> texts) {
    return texts.filter(Objects::nonNull).distinct().collect(Collectors.joining("; "));
  }
}
