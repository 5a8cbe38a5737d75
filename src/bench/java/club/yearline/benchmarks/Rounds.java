package club.yearline.benchmarks;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/**
 * What is compared is measured in turns, each time in a fresh process, because a shared machine may
 * be twice as slow a minute later. Figures are medians over the rounds.
 */
final class Rounds {

  private static final int COUNT = Integer.getInteger("rounds", 5);
  private static final TimeValue SECOND = TimeValue.seconds(1);
  private static final TimeValue TWO_SECONDS = TimeValue.seconds(2);

  private Rounds() {}

  /** What is measured in one turn, and how it is to be named. */
  record Turn(String name, ChainedOptionsBuilder options) {}

  static ChainedOptionsBuilder options(String include) {
    return new OptionsBuilder()
        .include(include)
        .forks(1)
        .warmupIterations(5)
        .warmupTime(TWO_SECONDS)
        .measurementIterations(5)
        .measurementTime(SECOND)
        .shouldFailOnError(true);
  }

  /** Scores by name: that of the turn, a dot, and the benchmark's method. */
  static Map<String, double[]> run(List<Turn> turns) throws RunnerException {
    Map<String, double[]> scores = new LinkedHashMap<>();
    for (int round = 0; round < COUNT; round++) {
      for (Turn turn : turns) {
        for (RunResult result : new Runner(turn.options().build()).run()) {
          String name = turn.name() + "." + result.getPrimaryResult().getLabel();
          scores.computeIfAbsent(name, k -> new double[COUNT])[round] =
              result.getPrimaryResult().getScore();
        }
      }
    }
    return scores;
  }

  static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int middle = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
  }

  /** How many times the one score is the other, round by round. */
  static double[] ratios(double[] one, double[] other) {
    double[] ratios = new double[one.length];
    Arrays.setAll(ratios, i -> one[i] / other[i]);
    return ratios;
  }

  static void print(String what, double[] values, String unit) {
    double lowest = Arrays.stream(values).min().orElseThrow();
    double highest = Arrays.stream(values).max().orElseThrow();
    System.out.printf(
        Locale.ROOT,
        "%-58s %9.2f %-3s (%.2f to %.2f)%n",
        what,
        median(values),
        unit,
        lowest,
        highest);
  }
}
