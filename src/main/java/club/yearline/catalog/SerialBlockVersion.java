package club.yearline.catalog;

import static club.yearline.effectivity.EntryKind.SERIAL_BLOCK;
import static club.yearline.effectivity.EntryKind.SERIES;
import static club.yearline.effectivity.EntryKind.VARIANT;

import club.yearline.effectivity.SerialBlock;
import jakarta.persistence.CollectionTable;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a serial block says over a span of revisions. */
@Entity
class SerialBlockVersion extends Version {

  private long seriesId;
  private String firstSerial;
  private @Nullable String lastSerial;
  private long variantId;
  private @Nullable Integer allottedYear;
  private boolean intermixed;

  @ElementCollection
  @CollectionTable(name = "serial_block_citation", joinColumns = @JoinColumn(name = "version_id"))
  @OrderColumn(name = "position")
  private List<CitationPart> citations;

  protected SerialBlockVersion() {}

  private SerialBlockVersion(SerialBlock block, EntryIds ids, int since) {
    super(ids.id(SERIAL_BLOCK, block.key()), since);
    seriesId = ids.id(SERIES, block.series());
    firstSerial = block.firstSerial();
    lastSerial = block.lastSerial();
    variantId = ids.id(VARIANT, block.variant());
    allottedYear = block.year();
    intermixed = block.intermixed();
    citations = CitationPart.of(block, ids);
  }

  static SerialBlockVersion of(SerialBlock block, EntryIds ids, int since) {
    return new SerialBlockVersion(block, ids, since);
  }

  @Override
  SerialBlock toEntry(Sweep sweep) {
    return new SerialBlock(
        sweep.key(entryId()),
        sweep.key(seriesId),
        firstSerial,
        lastSerial,
        sweep.key(variantId),
        allottedYear,
        intermixed,
        sweep.citations(this));
  }
}
