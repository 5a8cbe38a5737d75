package club.yearline.api;

import club.yearline.citation.Citation;
import org.jspecify.annotations.Nullable;

/** A pointer into a source. */
record CitationView(
    String source,
    @Nullable String variant,
    @Nullable String locator,
    String stance,
    @Nullable String note) {

  static CitationView of(Citation citation) {
    return new CitationView(
        citation.source(),
        citation.variant(),
        citation.locator(),
        citation.stance().code(),
        citation.note());
  }
}
