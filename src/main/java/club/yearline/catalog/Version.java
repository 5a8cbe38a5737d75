package club.yearline.catalog;

import club.yearline.effectivity.Entry;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.MappedSuperclass;
import jakarta.persistence.SequenceGenerator;
import org.jspecify.annotations.Nullable;

/**
 * What an entry says over the revisions from {@code since} to before {@code until}. References are
 * numbers of entries, not associations: a version is one of a million rows that are read in one
 * sweep ({@link Sweep}), and what an entry refers to has versions of its own.
 */
@MappedSuperclass
abstract class Version {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "version_seq")
  @SequenceGenerator(name = "version_seq", sequenceName = "version_seq", allocationSize = 500)
  private @Nullable Long id;

  private long entryId;
  private int sinceRevision;
  private int untilRevision = VersionSpan.OPEN;

  protected Version() {}

  Version(long entryId, int sinceRevision) {
    this.entryId = entryId;
    this.sinceRevision = sinceRevision;
  }

  /** The entry as it read; asks the sweep for keys and parts. */
  abstract Entry toEntry(Sweep sweep);

  /** Its number, once persisted. */
  long id() {
    if (id == null) {
      throw new IllegalStateException("The version is not stored yet");
    }
    return id;
  }

  long entryId() {
    return entryId;
  }

  VersionSpan span(Entry entry) {
    return new VersionSpan(sinceRevision, untilRevision, entry);
  }
}
