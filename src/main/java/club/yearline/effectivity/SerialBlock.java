package club.yearline.effectivity;

import club.yearline.citation.Citation;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Serials allotted to one variant and one year.
 *
 * @param key stable key
 * @param series key of the series
 * @param firstSerial first serial, inclusive, as stamped
 * @param lastSerial last serial, inclusive; null: and on
 * @param variant key of the variant they were allotted to
 * @param year model year or year of manufacture; null where nobody knows
 * @param intermixed whether another block may share these serials
 * @param citations its citations
 */
public record SerialBlock(
    String key,
    String series,
    String firstSerial,
    @Nullable String lastSerial,
    String variant,
    @Nullable Integer year,
    boolean intermixed,
    List<Citation> citations)
    implements Entry {

  public SerialBlock {
    citations = List.copyOf(citations);
  }

  @Override
  public EntryKind kind() {
    return EntryKind.SERIAL_BLOCK;
  }
}
