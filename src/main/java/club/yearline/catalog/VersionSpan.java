package club.yearline.catalog;

import club.yearline.effectivity.Entry;

/**
 * One version of an entry and the revisions that have it.
 *
 * @param since first revision with this version
 * @param until first revision without it; {@link #OPEN} where the head has it
 * @param entry the entry as it read
 */
public record VersionSpan(int since, int until, Entry entry) {

  /** The end of a version that no revision has ended. */
  public static final int OPEN = Integer.MAX_VALUE;

  /** Whether the newest revision has this version. */
  public boolean isOpen() {
    return until == OPEN;
  }
}
