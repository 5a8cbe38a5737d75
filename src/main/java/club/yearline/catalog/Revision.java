package club.yearline.catalog;

import java.time.Instant;

/**
 * One published state of the whole catalogue.
 *
 * @param number 1, 2, 3 …; 0 before anything is published
 * @param publishedAt when it was published
 * @param note what it changes, in a line or two
 * @param proposedBy who proposed it
 * @param approvedBy who approved it
 */
public record Revision(
    int number, Instant publishedAt, String note, Contributor proposedBy, Contributor approvedBy) {

  /** Before anything is published. */
  public static final Revision NONE =
      new Revision(
          0, Instant.EPOCH, "Nothing is published yet.", Contributor.NOBODY, Contributor.NOBODY);
}
