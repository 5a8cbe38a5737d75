package club.yearline.catalog;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One published state of the whole catalogue.
 *
 * @param number 1, 2, 3 …; 0 before anything is published
 * @param publishedAt when it was published
 * @param note what it changes, in a line or two
 * @param proposedBy who proposed it; null where nobody is recorded
 * @param approvedBy who approved it; null where nobody is recorded
 */
public record Revision(
    int number,
    Instant publishedAt,
    String note,
    @Nullable String proposedBy,
    @Nullable String approvedBy) {

  /** Before anything is published. */
  public static final Revision NONE =
      new Revision(0, Instant.EPOCH, "Nothing is published yet.", null, null);
}
