package club.yearline.testing;

import java.util.UUID;

/** A fresh, empty database for one test. */
public record Database(String url, String user, String password) {

  /** H2 in memory, in the mode in which the application runs it. */
  public static Database h2() {
    return new Database(
        "jdbc:h2:mem:"
            + UUID.randomUUID()
            + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH"
            + ";LOCK_TIMEOUT=60000;DB_CLOSE_DELAY=-1",
        "sa",
        "");
  }

  /** PostgreSQL, from a server shared by all tests. */
  public static Database postgres() {
    return Postgres.freshDatabase();
  }
}
