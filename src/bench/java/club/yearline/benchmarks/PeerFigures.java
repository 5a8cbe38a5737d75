package club.yearline.benchmarks;

import club.yearline.Yearline;
import club.yearline.catalog.Edition;
import club.yearline.catalog.Publication;
import club.yearline.exchange.GeneratedRecords;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import org.openjdk.jmh.runner.RunnerException;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;

/** Publishes a generated catalogue to an embedded PostgreSQL and runs {@link PeerBenchmark}. */
public final class PeerFigures {

  private static final int FAMILIES = Integer.getInteger("families", 100);

  private PeerFigures() {}

  public static void main(String[] arguments) throws IOException, SQLException, RunnerException {
    try (EmbeddedPostgres server = EmbeddedPostgres.start()) {
      String url = server.getJdbcUrl("postgres", "postgres");
      publish(url);
      Peer.prepare(url);
      Map<String, double[]> scores =
          Rounds.run(
              List.of(
                  new Rounds.Turn(
                      "",
                      Rounds.options(PeerBenchmark.class.getName() + "\\.")
                          .jvmArgs(
                              "-Xmx1g",
                              "-D" + PeerBenchmark.URL + "=" + url,
                              "-D" + PeerBenchmark.FAMILIES + "=" + FAMILIES))));
      System.out.println();
      double[] engine = scores.get(".engine");
      double[] postgres = scores.get(".postgres");
      Rounds.print("engine, a serial anywhere in " + FAMILIES + " families", engine, "µs");
      Rounds.print("PostgreSQL, the same", postgres, "µs");
      Rounds.print("PostgreSQL against the engine", Rounds.ratios(postgres, engine), "x");
    }
  }

  /** As the application stores it. */
  private static void publish(String url) {
    try (var context =
        new SpringApplicationBuilder(Yearline.class)
            .web(WebApplicationType.NONE)
            .run("--spring.datasource.url=" + url)) {
      context
          .getBean(Publication.class)
          .publish(Edition.of("Generated", null, GeneratedRecords.of(FAMILIES).entries()));
    }
  }
}
