package club.yearline.benchmarks;

import java.util.List;
import java.util.Map;
import org.openjdk.jmh.runner.RunnerException;

/** Runs {@link EngineBenchmark} on a small and a large catalogue in turns. */
public final class EngineFigures {

  private EngineFigures() {}

  public static void main(String[] arguments) throws RunnerException {
    Map<String, double[]> scores = Rounds.run(List.of(turn("1"), turn("1000")));
    System.out.println();
    for (String asked : List.of("located", "typed", "anywhere")) {
      double[] small = scores.get("1." + asked);
      double[] large = scores.get("1000." + asked);
      Rounds.print(asked + ", 1 family", small, "µs");
      Rounds.print(asked + ", 1,000 families", large, "µs");
      Rounds.print(asked + ", 1,000 families against 1", Rounds.ratios(large, small), "x");
    }
  }

  private static Rounds.Turn turn(String families) {
    return new Rounds.Turn(
        families,
        Rounds.options(EngineBenchmark.class.getName() + "\\.")
            .param("families", families)
            .jvmArgs("-Xms2g", "-Xmx2g"));
  }
}
