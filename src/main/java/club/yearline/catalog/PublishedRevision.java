package club.yearline.catalog;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** A revision as stored. */
@Entity
@Table(name = "revision")
class PublishedRevision {

  @Id private int number;
  private Instant publishedAt;
  private String note;
  private @Nullable String proposedBy;
  private @Nullable String approvedBy;
  private @Nullable Long proposerId;
  private @Nullable Long approverId;

  protected PublishedRevision() {}

  static PublishedRevision of(Revision revision) {
    PublishedRevision stored = new PublishedRevision();
    stored.number = revision.number();
    stored.publishedAt = revision.publishedAt();
    stored.note = revision.note();
    stored.proposedBy = revision.proposedBy().name();
    stored.approvedBy = revision.approvedBy().name();
    stored.proposerId = revision.proposedBy().person();
    stored.approverId = revision.approvedBy().person();
    return stored;
  }

  Revision toRevision() {
    return new Revision(
        number,
        publishedAt,
        note,
        new Contributor(proposerId, proposedBy),
        new Contributor(approverId, approvedBy));
  }
}
