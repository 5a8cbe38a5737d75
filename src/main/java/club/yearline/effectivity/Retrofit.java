package club.yearline.effectivity;

import club.yearline.citation.Citation;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A value that may lawfully be installed later.
 *
 * @param key stable key
 * @param feature key of the feature
 * @param value value that may be installed
 * @param variant key of the variant it may be installed on
 * @param firstYear from airframes of this year
 * @param lastYear to airframes of this year, inclusive
 * @param series key of the series of the two serials
 * @param firstSerial from this serial, as stamped
 * @param lastSerial to this serial, inclusive, as stamped
 * @param document identifier of the approval or kit
 * @param note plain text
 * @param citations its citations
 */
public record Retrofit(
    String key,
    String feature,
    String value,
    String variant,
    @Nullable Integer firstYear,
    @Nullable Integer lastYear,
    @Nullable String series,
    @Nullable String firstSerial,
    @Nullable String lastSerial,
    String document,
    @Nullable String note,
    List<Citation> citations)
    implements Entry {

  public Retrofit {
    citations = List.copyOf(citations);
  }

  @Override
  public EntryKind kind() {
    return EntryKind.RETROFIT;
  }
}
