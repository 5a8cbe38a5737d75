package club.yearline.benchmarks;

import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.exchange.GeneratedRecords;
import java.io.IOException;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/**
 * A typed serial asked of the engine and of PostgreSQL, which holds the same records as the
 * application has stored them. The engine gives whole answers, the query the deciding changes
 * alone.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class PeerBenchmark {

  static final String URL = "peer.url";
  static final String FAMILIES = "peer.families";

  private static final int SERIALS = 500;

  private Catalogue catalogue = Catalogue.EMPTY;
  private List<String> serials = List.of();
  private @Nullable Peer peer;
  private int next;

  @Setup
  public void agree() throws SQLException, IOException {
    catalogue = Catalogue.of(GeneratedRecords.of(Integer.getInteger(FAMILIES)));
    serials = Serials.anywhere(catalogue, SERIALS);
    peer = new Peer(System.getProperty(URL));
    for (String serial : serials) {
      Map<String, List<String>> theirs = peer.ask(serial);
      if (!theirs.equals(deciding(engine(serial)))) {
        throw new IllegalStateException(
            serial + ": " + theirs + " but " + deciding(engine(serial)));
      }
    }
  }

  private static Map<String, List<String>> deciding(List<Answer> answers) {
    Map<String, List<String>> deciding = new TreeMap<>();
    for (Answer answer : answers) {
      deciding.put(
          answer.feature().key(),
          answer.possible().stream()
              .map(p -> p.change() == null ? "" : Peer.mark(p.change().key(), p.open()))
              .toList());
    }
    return deciding;
  }

  private List<Answer> engine(String serial) {
    return catalogue.expected(Serials.find(catalogue, serial).position());
  }

  private String serial() {
    next = next + 1 < serials.size() ? next + 1 : 0;
    return serials.get(next);
  }

  @Benchmark
  public List<Answer> engine() {
    return engine(serial());
  }

  @Benchmark
  public Map<String, List<String>> postgres() throws SQLException {
    return Objects.requireNonNull(peer).ask(serial());
  }

  @TearDown
  public void close() throws SQLException {
    Objects.requireNonNull(peer).close();
  }
}
