package club.yearline.upkeep;

import java.io.BufferedReader;
import java.io.IOException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.MigrationVersion;

/**
 * Fills an empty database from a backup, of either kind of database and of this or an earlier
 * version: the tables are set up as they were when the backup was made, filled, compared, and only
 * then brought up to date.
 */
public final class Restore {

  private static final int AT_ONCE = 500;

  /** Pictures are rows too: so many characters are held before they are sent. */
  private static final int HELD = 16_000_000;

  /** Tables of which one filled row means that somebody works here. */
  private static final List<String> IN_USE = List.of("revision", "person");

  private final Flyway flyway;
  private final DataSource target;

  /**
   * Restores into a database.
   *
   * @param flyway knows the migrations; has not migrated yet
   */
  public Restore(Flyway flyway, DataSource target) {
    this.flyway = flyway;
    this.target = target;
  }

  /**
   * Fills the database.
   *
   * @throws UnusableBackup if it is not empty, or the backup is of a later version; then nothing
   *     was changed
   */
  public void from(BackupFile backup) throws IOException, SQLException {
    Contents contents = backup.contents();
    requireKnown(contents.schema());
    setUp(contents.schema());
    try (Connection connection = target.getConnection()) {
      List<Table> tables = tables(connection, contents);
      // These end a transaction by themselves, and do no harm if the rest is refused.
      count(connection, tables, contents);
      connection.setAutoCommit(false);
      try {
        clear(connection, tables);
        for (Table table : tables) {
          fill(connection, table, backup);
          compare(connection, table, contents);
        }
        connection.commit();
      } catch (SQLException | IOException | RuntimeException e) {
        connection.rollback();
        throw e;
      } finally {
        connection.setAutoCommit(true);
      }
    }
    flyway.migrate();
  }

  private void requireKnown(String schema) throws UnusableBackup {
    MigrationVersion newest = MigrationVersion.EMPTY;
    for (MigrationInfo info : flyway.info().all()) {
      MigrationVersion one = info.getVersion();
      newest = one != null && one.compareTo(newest) > 0 ? one : newest;
    }
    if (MigrationVersion.fromVersion(schema).compareTo(newest) > 0) {
      throw new UnusableBackup("later-schema", schema, newest);
    }
  }

  private void setUp(String schema) throws IOException, SQLException {
    try (Connection connection = target.getConnection()) {
      Schema here = new Schema(connection);
      if (here.exists()) {
        requireUnused(connection);
        MigrationVersion present = MigrationVersion.fromVersion(here.version());
        if (present.compareTo(MigrationVersion.fromVersion(schema)) > 0) {
          throw new UnusableBackup("set-up-later", present, schema);
        }
      }
    }
    Flyway.configure()
        .configuration(flyway.getConfiguration())
        .target(MigrationVersion.fromVersion(schema))
        .load()
        .migrate();
  }

  private static void requireUnused(Connection connection) throws IOException, SQLException {
    for (Table table : new Schema(connection).tables()) {
      if (IN_USE.contains(table.name()) && isFilled(connection, table)) {
        throw new UnusableBackup("not-empty");
      }
    }
  }

  private static boolean isFilled(Connection connection, Table table) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery(table.select() + " limit 1")) {
      return rows.next();
    }
  }

  private static List<Table> tables(Connection connection, Contents contents)
      throws IOException, SQLException {
    List<Table> tables = new Schema(connection).tables();
    if (!contents.tables().keySet().equals(Set.copyOf(tables.stream().map(Table::name).toList()))) {
      throw new UnusableBackup("other-tables", contents.schema());
    }
    return tables;
  }

  private static void count(Connection connection, List<Table> tables, Contents contents)
      throws SQLException {
    try (Statement statement = connection.createStatement()) {
      for (Map.Entry<String, Long> next : contents.sequences().entrySet()) {
        statement.execute(
            "alter sequence %s restart with %d"
                .formatted(Table.quoted(next.getKey()), next.getValue()));
      }
      for (Table table : tables) {
        for (String column : table.counter()) {
          statement.execute(
              "alter table %s alter column %s restart with %d"
                  .formatted(
                      Table.quoted(table.name()),
                      Table.quoted(column),
                      contents.counters().get(table.name())));
        }
      }
    }
  }

  /** Migrations leave a few rows, such as the club's settings: the backup has them too. */
  private static void clear(Connection connection, List<Table> tables) throws SQLException {
    List<Table> childrenFirst = new ArrayList<>(tables);
    Collections.reverse(childrenFirst);
    try (Statement statement = connection.createStatement()) {
      for (Table table : childrenFirst) {
        if (isFilled(connection, table)) {
          statement.execute("delete from " + Table.quoted(table.name()));
        }
      }
    }
  }

  private static void fill(Connection connection, Table table, BackupFile backup)
      throws IOException, SQLException {
    try (PreparedStatement insert = connection.prepareStatement(table.insert());
        BufferedReader lines = backup.lines(table.name())) {
      int waiting = 0;
      long held = 0;
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        Lines.bind(table, line, insert);
        insert.addBatch();
        held += line.length();
        if (++waiting == AT_ONCE || held > HELD) {
          insert.executeBatch();
          waiting = 0;
          held = 0;
        }
      }
      if (waiting > 0) {
        insert.executeBatch();
      }
    }
  }

  private static void compare(Connection connection, Table table, Contents contents)
      throws IOException, SQLException {
    Counted.Counting counting = new Counted.Counting();
    Snapshot.read(connection, table, counting::add);
    if (!counting.counted().equals(contents.tables().get(table.name()))) {
      throw new UnusableBackup("differs-here", table.name());
    }
  }
}
