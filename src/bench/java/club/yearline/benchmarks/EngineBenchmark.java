package club.yearline.benchmarks;

import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Located;
import club.yearline.effectivity.Position;
import club.yearline.exchange.GeneratedRecords;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The expected configuration of one serial: 60 answers, as pages and API ask for them. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class EngineBenchmark {

  static final String VARIANT = "f0000-b";
  private static final int FEATURES = 60;

  /** More than the caches of a processor hold of a large catalogue. */
  private static final int PLACES = 4096;

  @Param({"1", "1000"})
  public int families;

  private Catalogue catalogue = Catalogue.EMPTY;
  private List<String> serials = List.of();
  private Position[] positions = {};
  private List<String> anywhere = List.of();
  private int next;

  @Setup
  public void compile() {
    catalogue = Catalogue.of(GeneratedRecords.of(families));
    serials = Serials.of(catalogue, VARIANT);
    positions =
        serials.stream().map(s -> Serials.find(catalogue, s).position()).toArray(Position[]::new);
    anywhere = Serials.anywhere(catalogue, PLACES);
    for (String serial : anywhere) {
      check(typed(serial));
    }
    check(catalogue.expected(positions[0]));
  }

  private static void check(List<Answer> answers) {
    if (answers.size() != FEATURES) {
      throw new IllegalStateException("Not " + FEATURES + " answers but " + answers.size());
    }
  }

  private List<Answer> typed(String serial) {
    Located.Found found = Serials.find(catalogue, serial);
    return catalogue.expected(found.position());
  }

  /** The answers, for serials of one variant whose place is known. */
  @Benchmark
  public List<Answer> located() {
    next = next + 1 < positions.length ? next + 1 : 0;
    return catalogue.expected(positions[next]);
  }

  /** The same from the typed text on: which series, which block, then the answers. */
  @Benchmark
  public List<Answer> typed() {
    next = next + 1 < serials.size() ? next + 1 : 0;
    return typed(serials.get(next));
  }

  /** From the typed text on, for serials all over the catalogue: memory is cold where it is big. */
  @Benchmark
  public List<Answer> anywhere() {
    next = next + 1 < PLACES ? next + 1 : 0;
    return typed(anywhere.get(next));
  }
}
