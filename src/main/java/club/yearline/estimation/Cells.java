package club.yearline.estimation;

import java.util.Arrays;
import java.util.List;

/**
 * The candidates for a cut-in, in cells between which an airframe was seen: inside a cell nothing
 * that was seen tells one candidate from another. A cell ends at an airframe's ordinal, because
 * that airframe is old for every candidate above.
 */
final class Cells {

  private final long[] lasts;
  private final long first;

  Cells(Bounds candidates, List<Sighting> sightings) {
    first = candidates.first();
    long[] ends =
        sightings.stream()
            .mapToLong(Sighting::ordinal)
            .filter(o -> candidates.holds(o) && o < candidates.last())
            .sorted()
            .distinct()
            .toArray();
    lasts = Arrays.copyOf(ends, ends.length + 1);
    lasts[ends.length] = candidates.last();
  }

  int count() {
    return lasts.length;
  }

  long first(int cell) {
    return cell == 0 ? first : lasts[cell - 1] + 1;
  }

  long last(int cell) {
    return lasts[cell];
  }

  /** The candidates from one cell to another, both included. */
  Bounds range(int from, int to) {
    return new Bounds(first(from), last(to));
  }

  /** How many candidates there are. */
  long size() {
    return range(0, count() - 1).size();
  }

  /** The logarithm of the number of candidates in a cell. */
  double logSize(int cell) {
    return Math.log((double) range(cell, cell).size());
  }

  /** The logarithm of the number of pairs in a cell, the first of a pair below the second. */
  double logPairs(int cell) {
    return logPairs(range(cell, cell).size());
  }

  static double logPairs(long size) {
    return Math.log((double) size) + Math.log((double) (size - 1)) - Math.log(2);
  }

  /**
   * The cells that lie wholly at or below an ordinal that was seen, or below the first candidate,
   * or not below the last.
   */
  int countUpTo(long ordinal) {
    int found = Arrays.binarySearch(lasts, ordinal);
    return found >= 0 ? found + 1 : -found - 1;
  }
}
