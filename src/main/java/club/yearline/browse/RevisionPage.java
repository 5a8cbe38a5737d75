package club.yearline.browse;

import club.yearline.catalog.Contributors;
import club.yearline.catalog.Revision;
import club.yearline.web.Times;
import org.jspecify.annotations.Nullable;

/**
 * One revision as lists and its page show it.
 *
 * @param number its number
 * @param href its page
 * @param published when, in ISO form, UTC
 * @param note what it changes
 * @param proposedBy who proposed it
 * @param approvedBy who approved it, where that was somebody else
 * @param alone whether a person with an account approved what was their own
 */
record RevisionPage(
    int number,
    String href,
    String published,
    String note,
    @Nullable String proposedBy,
    @Nullable String approvedBy,
    boolean alone) {

  static RevisionPage of(Revision revision, Contributors contributors) {
    boolean same = revision.approvedBy().equals(revision.proposedBy());
    return new RevisionPage(
        revision.number(),
        "/revisions/" + revision.number(),
        Times.minute(revision.publishedAt()),
        revision.note(),
        contributors.nameOf(revision.proposedBy()),
        same ? null : contributors.nameOf(revision.approvedBy()),
        same && revision.approvedBy().person() != null);
  }
}
