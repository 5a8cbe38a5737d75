package club.yearline.browse;

import club.yearline.catalog.Links;
import club.yearline.citation.Citation;
import club.yearline.citation.Source;
import club.yearline.effectivity.Catalogue;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A source that some records cite, ready to show.
 *
 * @param title title of the source
 * @param locators where in it, each place once; empty where none is recorded
 * @param notes what is said about it; empty where nothing is
 * @param disputes whether it speaks against the records
 * @param grade code of the evidence it makes
 * @param href page of the source
 */
record Cited(
    String title, String locators, String notes, boolean disputes, String grade, String href) {

  private static final String BETWEEN = "; ";

  private static final Comparator<Source> BEST_FIRST =
      Comparator.comparing((Source s) -> s.kind().grade()).thenComparing(Source::title);

  /** One line for each source and stance, best evidence first, then by title. */
  static List<Cited> of(List<Citation> citations, Catalogue catalogue, Links links) {
    Map<List<Object>, List<Citation>> bySource =
        citations.stream()
            .collect(
                Collectors.groupingBy(
                    c -> List.of(c.source(), c.supports()),
                    LinkedHashMap::new,
                    Collectors.toList()));
    return bySource.values().stream()
        .filter(of -> catalogue.source(of.get(0).source()).isPresent())
        .sorted(Comparator.comparing(of -> source(of, catalogue), BEST_FIRST))
        .map(of -> of(source(of, catalogue), of, links))
        .toList();
  }

  private static Source source(List<Citation> citations, Catalogue catalogue) {
    return catalogue.source(citations.get(0).source()).orElseThrow().source();
  }

  private static Cited of(Source source, List<Citation> citations, Links links) {
    return new Cited(
        source.title(),
        joined(citations.stream().map(Citation::locator).toList()),
        joined(citations.stream().map(Citation::note).toList()),
        !citations.get(0).supports(),
        source.kind().grade().code(),
        links.source(source.key()));
  }

  private static String joined(List<@Nullable String> texts) {
    return texts.stream().filter(Objects::nonNull).distinct().collect(Collectors.joining(BETWEEN));
  }
}
