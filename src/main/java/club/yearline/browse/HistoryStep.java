package club.yearline.browse;

import club.yearline.catalog.VersionSpan;
import club.yearline.effectivity.Entry;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What one revision did to an entry.
 *
 * @param revision number of the revision
 * @param before how the entry read before; null where it was not there
 * @param after how it reads since; null where it was withdrawn
 */
record HistoryStep(int revision, @Nullable Entry before, @Nullable Entry after) {

  /**
   * The steps of an entry's versions, newest first. An entry that was withdrawn may come back; then
   * one version ends before the next begins.
   *
   * @param versions oldest first
   * @param newest the last revision that may be told of
   */
  static List<HistoryStep> of(List<VersionSpan> versions, int newest) {
    List<HistoryStep> steps = new ArrayList<>();
    VersionSpan last = null;
    for (VersionSpan version : versions) {
      boolean follows = last != null && last.until() == version.since();
      if (last != null && !follows) {
        steps.add(new HistoryStep(last.until(), last.entry(), null));
      }
      Entry before = last != null && follows ? last.entry() : null;
      steps.add(new HistoryStep(version.since(), before, version.entry()));
      last = version;
    }
    if (last != null && !last.isOpen()) {
      steps.add(new HistoryStep(last.until(), last.entry(), null));
    }
    steps.removeIf(step -> step.revision() > newest);
    Collections.reverse(steps);
    return steps;
  }

  /** Code of what was done. */
  String what() {
    if (before == null) {
      return "added";
    }
    return after == null ? "withdrawn" : "changed";
  }

  /** The entry as this step left it, or as it last read. */
  Entry entry() {
    if (after != null) {
      return after;
    }
    if (before != null) {
      return before;
    }
    throw new IllegalStateException("Revision " + revision + " did nothing");
  }

  /** The revision that has that entry. */
  int readAt() {
    return after == null ? revision - 1 : revision;
  }
}
