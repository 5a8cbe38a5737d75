package club.yearline.effectivity;

import club.yearline.citation.Grade;
import java.util.List;

/**
 * An answer of the slow evaluator.
 *
 * @param possible the possible changes, oldest first
 * @param stretches for a split
 */
record SlowAnswer(
    State state,
    List<SlowPossible> possible,
    List<SlowStretch> stretches,
    Grade grade,
    boolean disputed) {

  /** A possible change by key, {@code -} for nothing recorded, and whether it is open. */
  record SlowPossible(String change, boolean open) {}

  /** Serials with one answer. */
  record SlowStretch(
      String series, Serial first, Serial last, double airframes, SlowAnswer answer) {}

  List<String> changes() {
    return possible.stream().map(SlowPossible::change).toList();
  }

  /** Whether state and possible changes are the same. */
  boolean agrees(SlowAnswer other) {
    return state == other.state && changes().equals(other.changes());
  }
}
