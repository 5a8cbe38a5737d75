package club.yearline.browse;

import club.yearline.catalog.Reading;
import club.yearline.citation.Citation;
import club.yearline.citation.Source;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.SourceEntry;
import club.yearline.effectivity.Variant;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A citation as a record's page shows it.
 *
 * @param title title of the source
 * @param href page of the source
 * @param kind message key of its kind
 * @param identifier document number
 * @param locator page, paragraph or figure
 * @param supports whether it speaks for the record
 * @param variant designation of the variant whose cut-in alone it bears on
 * @param note plain text
 */
record CitationLine(
    String title,
    String href,
    String kind,
    @Nullable String identifier,
    @Nullable String locator,
    boolean supports,
    @Nullable String variant,
    @Nullable String note) {

  /** The lines of a record's citations, those in favour first. */
  static List<CitationLine> of(List<Citation> citations, Reading reading) {
    return citations.stream()
        .map(c -> of(c, reading))
        .sorted(Comparator.comparing((CitationLine l) -> !l.supports()))
        .toList();
  }

  private static CitationLine of(Citation citation, Reading reading) {
    Catalogue catalogue = reading.catalogue();
    Source source = catalogue.source(citation.source()).map(SourceEntry::source).orElseThrow();
    String only = citation.variant();
    return new CitationLine(
        source.title(),
        reading.link("/sources/" + source.key()),
        "records.source-kind." + source.kind().code(),
        source.identifier(),
        citation.locator(),
        citation.supports(),
        only == null ? null : catalogue.variant(only).map(Variant::designation).orElse(only),
        citation.note());
  }
}
