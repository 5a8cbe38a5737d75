package club.yearline.upkeep;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.testing.Database;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * A check against a list of values ties a table of H2 to the connection that made it. Connections
 * are replaced every half hour, so that a table would take no row any more from then on.
 */
class ChecksOnH2Test {

  private final Database database = Database.h2();

  @BeforeEach
  void migrateByAConnectionThatIsClosed() {
    Flyway.configure()
        .dataSource(database.url(), database.user(), database.password())
        .locations("classpath:db/migration", "classpath:db/vendor/h2")
        .load()
        .migrate();
  }

  private Connection connection() throws SQLException {
    return DriverManager.getConnection(database.url(), database.user(), database.password());
  }

  @Test
  void peopleCanBeAddedAfterTheConnectionThatMadeTheirTableIsGone() throws SQLException {
    try (Connection connection = connection();
        Statement statement = connection.createStatement()) {
      int added =
          statement.executeUpdate(
              "insert into person (name, email, email_key, password, role, state, joined_at)"
                  + " values ('Ann', 'a@b.example', 'a@b.example', 'x', 'MEMBER', 'ACTIVE', now())");
      assertThat(added).isEqualTo(1);
    }
  }

  @Test
  void noCheckOfOursNamesAListOfValues() throws SQLException {
    List<String> lists = new ArrayList<>();
    try (Connection connection = connection();
        Statement statement = connection.createStatement();
        ResultSet rows =
            statement.executeQuery(
                "select check_clause from information_schema.check_constraints")) {
      int all = 0;
      while (rows.next()) {
        all++;
        if (rows.getString(1).contains(" IN(")) {
          lists.add(rows.getString(1));
        }
      }
      assertThat(all).isGreaterThan(20);
    }
    assertThat(lists).as("write it as: case column when 'A' then true … else false end").isEmpty();
  }
}
