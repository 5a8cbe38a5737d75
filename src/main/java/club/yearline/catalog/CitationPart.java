package club.yearline.catalog;

import static club.yearline.effectivity.EntryKind.SOURCE;
import static club.yearline.effectivity.EntryKind.VARIANT;

import club.yearline.citation.Citation;
import club.yearline.citation.Stance;
import club.yearline.effectivity.Entry;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A citation within a version. */
@Embeddable
record CitationPart(
    String citationKey,
    @Nullable Long variantId,
    long sourceId,
    @Nullable String locator,
    @Enumerated(EnumType.STRING) Stance stance,
    @Nullable String note) {

  static List<CitationPart> of(Entry entry, EntryIds ids) {
    return entry.citations().stream().map(citation -> of(citation, ids)).toList();
  }

  private static CitationPart of(Citation citation, EntryIds ids) {
    return new CitationPart(
        citation.key(),
        ids.idOrNull(VARIANT, citation.variant()),
        ids.id(SOURCE, citation.source()),
        citation.locator(),
        citation.stance(),
        citation.note());
  }

  Citation toCitation(Sweep sweep) {
    return new Citation(
        citationKey,
        sweep.keyOrNull(variantId),
        sweep.key(sourceId),
        sweep.textOrNull(locator),
        stance,
        note);
  }
}
