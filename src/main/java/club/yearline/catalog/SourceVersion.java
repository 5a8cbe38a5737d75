package club.yearline.catalog;

import static club.yearline.effectivity.EntryKind.SOURCE;

import club.yearline.citation.Source;
import club.yearline.citation.SourceKind;
import club.yearline.effectivity.SourceEntry;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What a source says over a span of revisions. */
@Entity
class SourceVersion extends Version {

  @Enumerated(EnumType.STRING)
  private SourceKind kind;

  private String title;
  private @Nullable String author;
  private @Nullable String publisher;
  private @Nullable String identifier;
  private @Nullable String issued;
  private @Nullable String url;
  private @Nullable LocalDate accessed;
  private @Nullable String note;

  protected SourceVersion() {}

  private SourceVersion(Source source, EntryIds ids, int since) {
    super(ids.id(SOURCE, source.key()), since);
    kind = source.kind();
    title = source.title();
    author = source.author();
    publisher = source.publisher();
    identifier = source.identifier();
    issued = source.issued();
    url = source.url();
    accessed = source.accessed();
    note = source.note();
  }

  static SourceVersion of(SourceEntry entry, EntryIds ids, int since) {
    return new SourceVersion(entry.source(), ids, since);
  }

  @Override
  SourceEntry toEntry(Sweep sweep) {
    return new SourceEntry(
        new Source(
            sweep.key(entryId()),
            kind,
            title,
            author,
            publisher,
            identifier,
            issued,
            url,
            accessed,
            note));
  }
}
