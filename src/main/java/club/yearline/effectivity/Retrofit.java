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

  /**
   * Whether it is recorded for a position of its variant: years and serials both fit. What the
   * position does not know does not exclude; a serial of another series than the record's does.
   */
  public boolean fits(Position position) {
    return variant.equals(position.variant().key())
        && holdsYear(position.year())
        && holdsSerial(position.series(), position.serial());
  }

  private boolean holdsYear(@Nullable Integer year) {
    return year == null
        || ((firstYear == null || firstYear <= year) && (lastYear == null || year <= lastYear));
  }

  private boolean holdsSerial(@Nullable Series of, @Nullable Serial serial) {
    if (series == null || of == null || serial == null) {
      return true;
    }
    return series.equals(of.key())
        && (firstSerial == null || !serial.isBelow(Block.readable(of, firstSerial)))
        && (lastSerial == null || !Block.readable(of, lastSerial).isBelow(serial));
  }
}
