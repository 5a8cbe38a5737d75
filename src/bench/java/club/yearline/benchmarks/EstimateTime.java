package club.yearline.benchmarks;

import club.yearline.effectivity.Serial;
import club.yearline.estimation.Bounds;
import club.yearline.estimation.Estimate;
import club.yearline.estimation.Sighting;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * What an estimate of a cut-in takes with everything that is told of it, by processor time of one
 * thread: few airframes and many, serials of four digits and of eighteen.
 */
public final class EstimateTime {

  private static final int ROUNDS = 9;
  private static final int WARM_UP = 4;
  private static final long SHORT = 9_999;

  private static volatile Object sink = "";

  private EstimateTime() {}

  public static void main(String[] arguments) {
    for (int airframes : new int[] {40, 1_000, 10_000}) {
      print(airframes, SHORT);
      print(airframes, Serial.MAX_ORDINAL);
    }
  }

  private static void print(int airframes, long highest) {
    Bounds candidates = new Bounds(1, highest);
    List<Sighting> sightings = sightings(airframes, highest);
    int calls = Math.max(1, 40_000 / airframes);
    double[] times = new double[ROUNDS];
    for (int round = -WARM_UP; round < ROUNDS; round++) {
      double time = milliseconds(candidates, sightings, calls);
      if (round >= 0) {
        times[round] = time;
      }
    }
    Rounds.print(
        airframes + " airframes, serials up to " + highest + ", processor time", times, "ms");
  }

  private static double milliseconds(Bounds candidates, List<Sighting> sightings, int calls) {
    long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    for (int i = 0; i < calls; i++) {
      Estimate estimate = Estimate.of(candidates, sightings);
      sink =
          List.of(
              estimate.credible(),
              estimate.densest(),
              estimate.window(),
              estimate.suspects(),
              estimate.growth());
    }
    long took = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before;
    return took / 1e6 / calls;
  }

  /** Airframes all over the series, one part in twenty exchanged; a window in the middle. */
  private static List<Sighting> sightings(int count, long highest) {
    Random random = new Random(count);
    List<Sighting> sightings = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double place = random.nextDouble();
      boolean isNew = place > 0.55 || (place > 0.45 && random.nextBoolean());
      boolean seen = (random.nextDouble() < 0.025) != isNew;
      Serial serial = Serial.of(1 + (long) (place * (highest - 1)));
      sightings.add(new Sighting("a" + i, serial, seen, 0.05));
    }
    return sightings;
  }
}
