package club.yearline.catalog;

import static club.yearline.effectivity.EntryKind.FEATURE;
import static club.yearline.effectivity.EntryKind.RETROFIT;
import static club.yearline.effectivity.EntryKind.SERIES;
import static club.yearline.effectivity.EntryKind.VARIANT;

import club.yearline.effectivity.Retrofit;
import jakarta.persistence.CollectionTable;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a retrofit says over a span of revisions. */
@Entity
class RetrofitVersion extends Version {

  private long featureId;
  private String fittedValue;
  private long variantId;
  private @Nullable Integer firstYear;
  private @Nullable Integer lastYear;
  private @Nullable Long seriesId;
  private @Nullable String firstSerial;
  private @Nullable String lastSerial;
  private String document;
  private @Nullable String note;

  @ElementCollection
  @CollectionTable(name = "retrofit_citation", joinColumns = @JoinColumn(name = "version_id"))
  @OrderColumn(name = "position")
  private List<CitationPart> citations;

  protected RetrofitVersion() {}

  private RetrofitVersion(Retrofit retrofit, EntryIds ids, int since) {
    super(ids.id(RETROFIT, retrofit.key()), since);
    featureId = ids.id(FEATURE, retrofit.feature());
    fittedValue = retrofit.value();
    variantId = ids.id(VARIANT, retrofit.variant());
    firstYear = retrofit.firstYear();
    lastYear = retrofit.lastYear();
    seriesId = ids.idOrNull(SERIES, retrofit.series());
    firstSerial = retrofit.firstSerial();
    lastSerial = retrofit.lastSerial();
    document = retrofit.document();
    note = retrofit.note();
    citations = CitationPart.of(retrofit, ids);
  }

  static RetrofitVersion of(Retrofit retrofit, EntryIds ids, int since) {
    return new RetrofitVersion(retrofit, ids, since);
  }

  @Override
  Retrofit toEntry(Sweep sweep) {
    return new Retrofit(
        sweep.key(entryId()),
        sweep.key(featureId),
        sweep.text(fittedValue),
        sweep.key(variantId),
        firstYear,
        lastYear,
        sweep.keyOrNull(seriesId),
        firstSerial,
        lastSerial,
        document,
        note,
        sweep.citations(this));
  }
}
