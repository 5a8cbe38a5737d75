package club.yearline.estimation;

import java.util.List;
import java.util.Map;

/**
 * Observations, ready for an estimate.
 *
 * @param counted what counts: each airframe once
 * @param leftOut how many do not count, by reason
 */
public record Gathered(List<Sighting> counted, Map<LeftOut, Integer> leftOut) {

  public Gathered {
    counted = List.copyOf(counted);
    leftOut = Map.copyOf(leftOut);
  }

  /** How many do not count for a reason. */
  public int leftOut(LeftOut reason) {
    return leftOut.getOrDefault(reason, 0);
  }

  /** How many airframes show the new value. */
  public int countNew() {
    return (int) counted.stream().filter(Sighting::isNew).count();
  }

  /** How many airframes show the old value. */
  public int countOld() {
    return counted.size() - countNew();
  }
}
