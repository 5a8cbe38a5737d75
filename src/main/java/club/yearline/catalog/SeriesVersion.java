package club.yearline.catalog;

import static club.yearline.effectivity.EntryKind.FAMILY;
import static club.yearline.effectivity.EntryKind.SERIES;

import club.yearline.effectivity.Series;
import jakarta.persistence.CollectionTable;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a series says over a span of revisions. */
@Entity
class SeriesVersion extends Version {

  private long familyId;
  private @Nullable String prefix;
  private @Nullable Integer digits;
  private boolean yearSuffix;
  private @Nullable String note;

  @ElementCollection
  @CollectionTable(name = "series_citation", joinColumns = @JoinColumn(name = "version_id"))
  @OrderColumn(name = "position")
  private List<CitationPart> citations;

  protected SeriesVersion() {}

  private SeriesVersion(Series series, EntryIds ids, int since) {
    super(ids.id(SERIES, series.key()), since);
    familyId = ids.id(FAMILY, series.family());
    prefix = series.prefix();
    digits = series.digits();
    yearSuffix = series.yearSuffix();
    note = series.note();
    citations = CitationPart.of(series, ids);
  }

  static SeriesVersion of(Series series, EntryIds ids, int since) {
    return new SeriesVersion(series, ids, since);
  }

  @Override
  Series toEntry(Sweep sweep) {
    return new Series(
        sweep.key(entryId()),
        sweep.key(familyId),
        prefix,
        digits,
        yearSuffix,
        note,
        sweep.citations(this));
  }
}
