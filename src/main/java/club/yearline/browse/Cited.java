package club.yearline.browse;

import club.yearline.citation.Citation;
import club.yearline.effectivity.Catalogue;
import java.util.List;
import java.util.Optional;

/**
 * A citation, ready to show.
 *
 * @param title title of the source
 * @param locator where in it; empty where not recorded
 * @param note what is said about it; empty where nothing is
 * @param disputes whether it speaks against the record
 * @param grade code of the evidence it makes
 * @param href page of the source
 */
record Cited(
    String title, String locator, String note, boolean disputes, String grade, String href) {

  static List<Cited> of(List<Citation> citations, Catalogue catalogue, Links links) {
    return citations.stream().flatMap(c -> of(c, catalogue, links).stream()).distinct().toList();
  }

  private static Optional<Cited> of(Citation citation, Catalogue catalogue, Links links) {
    return catalogue
        .source(citation.source())
        .map(
            s ->
                new Cited(
                    s.source().title(),
                    citation.locator() == null ? "" : citation.locator(),
                    citation.note() == null ? "" : citation.note(),
                    !citation.supports(),
                    s.source().kind().grade().code(),
                    links.source(s.key())));
  }
}
