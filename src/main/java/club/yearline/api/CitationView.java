package club.yearline.api;

import club.yearline.citation.Citation;
import club.yearline.citation.Stance;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A pointer into a source. */
record CitationView(
    String source,
    @Nullable String variant,
    @Nullable String locator,
    @Coded(Stance.class) String stance,
    @Nullable String note) {

  static List<CitationView> all(List<Citation> citations) {
    return AnswerView.each(citations, CitationView::of);
  }

  static CitationView of(Citation citation) {
    return new CitationView(
        citation.source(),
        citation.variant(),
        citation.locator(),
        citation.stance().code(),
        citation.note());
  }
}
