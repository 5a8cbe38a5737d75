package club.yearline.benchmarks;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Position;
import club.yearline.exchange.GeneratedRecords;
import java.lang.management.ManagementFactory;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;

/**
 * What {@link EngineBenchmark} asks, by processor time of one thread, the two catalogues in turns
 * in one process: for machines that others use too, where elapsed time says little.
 */
public final class EngineTime {

  private static final int ROUNDS = 9;
  private static final int WARM_UP = 4;
  private static final int CALLS = 50_000;
  private static final int PLACES = 4096;

  private static volatile Object sink = "";

  private EngineTime() {}

  public static void main(String[] arguments) {
    Map<String, IntFunction<Object>> asked = new LinkedHashMap<>();
    add(asked, "1 family", Catalogue.of(GeneratedRecords.of(1)));
    add(asked, "1,000 families", Catalogue.of(GeneratedRecords.of(1000)));
    Map<String, double[]> times = new LinkedHashMap<>();
    for (int round = -WARM_UP; round < ROUNDS; round++) {
      for (Map.Entry<String, IntFunction<Object>> each : asked.entrySet()) {
        double time = microseconds(each.getValue());
        if (round >= 0) {
          times.computeIfAbsent(each.getKey(), k -> new double[ROUNDS])[round] = time;
        }
      }
    }
    times.forEach((what, values) -> Rounds.print(what + ", processor time", values, "µs"));
    for (String what : List.of("located", "typed", "anywhere")) {
      double[] large = times.getOrDefault(what + ", 1,000 families", new double[] {});
      double[] small = times.getOrDefault(what + ", 1 family", new double[] {});
      Rounds.print(what + ", 1,000 families against 1", Rounds.ratios(large, small), "x");
    }
  }

  private static void add(Map<String, IntFunction<Object>> asked, String size, Catalogue of) {
    List<String> serials = Serials.of(of, EngineBenchmark.VARIANT);
    List<String> anywhere = Serials.anywhere(of, PLACES);
    Position[] places =
        serials.stream().map(s -> Serials.find(of, s).position()).toArray(Position[]::new);
    asked.put("located, " + size, i -> of.expected(places[i % places.length]));
    asked.put("typed, " + size, i -> typed(of, serials.get(i % serials.size())));
    asked.put("anywhere, " + size, i -> typed(of, anywhere.get(i % PLACES)));
  }

  private static Object typed(Catalogue catalogue, String serial) {
    return catalogue.expected(Serials.find(catalogue, serial).position());
  }

  private static double microseconds(IntFunction<Object> question) {
    var threads = ManagementFactory.getThreadMXBean();
    long began = threads.getCurrentThreadCpuTime();
    for (int i = 0; i < CALLS; i++) {
      sink = question.apply(i);
    }
    return (threads.getCurrentThreadCpuTime() - began) / 1e3 / CALLS;
  }
}
