package club.yearline.browse;

import club.yearline.web.Pages;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The history of one entry as its page shows it.
 *
 * @param kind message key of what it is
 * @param name what it is called
 * @param href the entry's page, or the last that there was
 * @param withdrawn whether it is not in the catalogue any more
 * @param items what revisions did to it, newest first
 * @param pages where to read on
 */
record HistoryPage(
    String kind,
    String name,
    String href,
    boolean withdrawn,
    List<HistoryItem> items,
    Pages pages) {

  /**
   * What one revision did.
   *
   * @param revision the revision: when, who, why
   * @param what code of what was done: added, changed, withdrawn
   * @param differences what reads differently; all of it where it was added
   * @param state the entry's page as this revision left it; where it was withdrawn, as it last was
   * @param correction the correction that became the revision, for those signed in; null where
   *     nobody with an account proposed it
   */
  record HistoryItem(
      RevisionPage revision,
      String what,
      List<FieldDifference> differences,
      String state,
      @Nullable String correction) {}
}
