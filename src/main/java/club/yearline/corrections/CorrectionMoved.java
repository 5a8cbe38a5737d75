package club.yearline.corrections;

import org.jspecify.annotations.Nullable;

/**
 * Something happened to a correction that others may want to hear of. Sent inside the transaction.
 *
 * @param correction its number
 * @param title what it is about
 * @param what code of what happened: submitted, sent-back, mended, approved, rejected, withdrawn,
 *     remark
 * @param author number of its author's account
 * @param actor number of the account of who did it
 * @param note what was said with it
 */
public record CorrectionMoved(
    long correction, String title, String what, long author, long actor, @Nullable String note) {}
