package club.yearline.testing;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.UUID;
import org.testcontainers.DockerClientFactory;
import org.testcontainers.postgresql.PostgreSQLContainer;

/**
 * A real PostgreSQL server, one for all tests of a run: in a container where a Docker engine
 * answers, else embedded. Where neither can be had, tests that ask for it fail.
 */
public final class Postgres {

  private static final String IMAGE = "postgres:18-alpine";

  private final String url;
  private final String user;
  private final String password;

  private Postgres(String url, String user, String password) {
    this.url = url;
    this.user = user;
    this.password = password;
  }

  /** A fresh, empty database. */
  public static Database freshDatabase() {
    return Server.SHARED.create("test_" + UUID.randomUUID().toString().replace("-", ""));
  }

  private Database create(String name) {
    try (Connection connection = DriverManager.getConnection(url + "postgres", user, password);
        Statement statement = connection.createStatement()) {
      statement.execute("create database " + name);
    } catch (SQLException e) {
      throw new IllegalStateException("Cannot create a database for a test", e);
    }
    return new Database(url + name, user, password);
  }

  private static Postgres start() {
    return DockerClientFactory.instance().isDockerAvailable() ? inContainer() : embedded();
  }

  /** Testcontainers removes the container when the run ends. */
  @SuppressWarnings("resource")
  private static Postgres inContainer() {
    PostgreSQLContainer container = new PostgreSQLContainer(IMAGE);
    container.start();
    String server =
        "jdbc:postgresql://" + container.getHost() + ":" + container.getMappedPort(5432);
    return new Postgres(server + "/", container.getUsername(), container.getPassword());
  }

  /** The embedded server stops when the run ends. */
  @SuppressWarnings("resource")
  private static Postgres embedded() {
    try {
      EmbeddedPostgres server = EmbeddedPostgres.start();
      return new Postgres(
          "jdbc:postgresql://localhost:" + server.getPort() + "/", "postgres", "postgres");
    } catch (IOException e) {
      throw new UncheckedIOException("Neither Docker nor an embedded PostgreSQL can be had", e);
    }
  }

  private static final class Server {
    static final Postgres SHARED = start();
  }
}
