package club.yearline.upkeep;

import java.sql.Connection;
import java.sql.DatabaseMetaData;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.flywaydb.core.api.MigrationVersion;

/** What is stored in a database, as the database itself tells. */
final class Schema {

  private static final String HISTORY = "flyway_schema_history";

  /** Who is signed in at the moment is nothing to keep, and would let a thief of a backup in. */
  private static final Set<String> PASSING =
      Set.of("spring_session", "spring_session_attributes", HISTORY);

  private final Connection connection;

  Schema(Connection connection) {
    this.connection = connection;
  }

  /** Whether anything was ever set up here. */
  boolean exists() throws SQLException {
    return names().contains(HISTORY);
  }

  /** The version to which the schema was migrated. */
  String version() throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet rows =
            statement.executeQuery(
                "select \"version\" from "
                    + HISTORY
                    + " where \"success\" = true and \"version\" is not null")) {
      MigrationVersion newest = MigrationVersion.EMPTY;
      while (rows.next()) {
        MigrationVersion one = MigrationVersion.fromVersion(rows.getString(1));
        newest = one.compareTo(newest) > 0 ? one : newest;
      }
      return newest.getVersion();
    }
  }

  /** The tables, each after those that it refers to. */
  List<Table> tables() throws SQLException {
    Map<String, Set<String>> waiting = new TreeMap<>();
    for (String name : names()) {
      if (!PASSING.contains(name)) {
        waiting.put(name, parents(name));
      }
    }
    List<Table> ordered = new ArrayList<>();
    while (!waiting.isEmpty()) {
      String next =
          waiting.entrySet().stream()
              .filter(e -> e.getValue().stream().noneMatch(waiting::containsKey))
              .map(Map.Entry::getKey)
              .findFirst()
              .orElseThrow(() -> new IllegalStateException("Tables in a circle: " + waiting));
      waiting.remove(next);
      ordered.add(table(next));
    }
    return ordered;
  }

  private Set<String> names() throws SQLException {
    Set<String> names = new TreeSet<>();
    try (ResultSet rows =
        metadata()
            .getTables(null, connection.getSchema(), "%", new String[] {"TABLE", "BASE TABLE"})) {
      while (rows.next()) {
        names.add(rows.getString("TABLE_NAME"));
      }
    }
    return names;
  }

  private Set<String> parents(String table) throws SQLException {
    Set<String> parents = new TreeSet<>();
    try (ResultSet rows = metadata().getImportedKeys(null, connection.getSchema(), table)) {
      while (rows.next()) {
        parents.add(rows.getString("PKTABLE_NAME"));
      }
    }
    return parents;
  }

  private Table table(String name) throws SQLException {
    List<Table.Column> columns = new ArrayList<>();
    List<String> counter = new ArrayList<>();
    try (ResultSet rows = metadata().getColumns(null, connection.getSchema(), name, "%")) {
      while (rows.next()) {
        String column = rows.getString("COLUMN_NAME");
        CellKind kind =
            CellKind.of(name + "." + column, rows.getInt("DATA_TYPE"), rows.getString("TYPE_NAME"));
        columns.add(new Table.Column(column, kind));
        if ("YES".equals(rows.getString("IS_AUTOINCREMENT"))) {
          counter.add(column);
        }
      }
    }
    columns.sort(Comparator.comparing(Table.Column::name));
    return new Table(name, List.copyOf(columns), List.copyOf(counter));
  }

  /** The next number of each sequence, by name. */
  Map<String, Long> sequences() throws SQLException {
    return isH2()
        ? numbers(
            "select sequence_name, base_value from information_schema.sequences"
                + " where sequence_schema = schema() and sequence_name not like 'system_sequence%'")
        : postgresSequences();
  }

  private Map<String, Long> postgresSequences() throws SQLException {
    Map<String, Long> next = new LinkedHashMap<>();
    // Those behind identity columns belong to their tables.
    for (String name :
        numbers(
                "select s.sequencename, 0 from pg_sequences s where s.schemaname = current_schema()"
                    + " and not exists (select 1 from pg_depend d where d.deptype = 'i'"
                    + " and d.objid = (quote_ident(s.schemaname) || '.'"
                    + " || quote_ident(s.sequencename))::regclass)")
            .keySet()) {
      next.putAll(
          numbers(
              "select '%s', case when is_called then last_value + (select increment_by from"
                      .formatted(name)
                  + " pg_sequences where schemaname = current_schema() and sequencename = '%s')"
                      .formatted(name)
                  + " else last_value end from "
                  + Table.quoted(name)));
    }
    return next;
  }

  /** The next number of each column that counts by itself, by table. */
  Map<String, Long> counters(List<Table> tables) throws SQLException {
    Map<String, Long> next = new TreeMap<>();
    for (Table table : tables) {
      for (String column : table.counter()) {
        String highest =
            "select '%s', coalesce(max(%s), 0) + 1 from %s"
                .formatted(table.name(), Table.quoted(column), Table.quoted(table.name()));
        next.putAll(numbers(highest));
      }
    }
    return next;
  }

  private Map<String, Long> numbers(String query) throws SQLException {
    Map<String, Long> numbers = new TreeMap<>();
    try (Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery(query)) {
      while (rows.next()) {
        numbers.put(rows.getString(1), rows.getLong(2));
      }
    }
    return numbers;
  }

  boolean isH2() throws SQLException {
    return metadata().getDatabaseProductName().equals("H2");
  }

  private DatabaseMetaData metadata() throws SQLException {
    return connection.getMetaData();
  }
}
