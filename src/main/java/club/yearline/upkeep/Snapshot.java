package club.yearline.upkeep;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.function.Consumer;
import javax.sql.DataSource;

/** One moment of a database, whatever others write meanwhile. */
final class Snapshot implements AutoCloseable {

  /** H2's own isolation level: {@code org.h2.engine.Constants.TRANSACTION_SNAPSHOT}. */
  private static final int H2_SNAPSHOT = 6;

  private static final int FETCHED_AT_ONCE = 1000;

  private final Connection connection;

  /** What is stored. */
  final Schema schema;

  Snapshot(DataSource source) throws SQLException {
    connection = source.getConnection();
    schema = new Schema(connection);
    connection.setAutoCommit(false);
    connection.setTransactionIsolation(
        schema.isH2() ? H2_SNAPSHOT : Connection.TRANSACTION_REPEATABLE_READ);
  }

  /** Hands on every row of a table as a line. */
  void lines(Table table, Consumer<String> reader) throws SQLException {
    read(connection, table, reader);
  }

  static void read(Connection connection, Table table, Consumer<String> reader)
      throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.setFetchSize(FETCHED_AT_ONCE);
      try (ResultSet rows = statement.executeQuery(table.select())) {
        while (rows.next()) {
          reader.accept(Lines.of(table, rows));
        }
      }
    }
  }

  /** The tables, each after those that it refers to. */
  List<Table> tables() throws SQLException {
    return schema.tables();
  }

  @Override
  public void close() throws SQLException {
    try {
      connection.rollback();
    } finally {
      connection.setTransactionIsolation(Connection.TRANSACTION_READ_COMMITTED);
      connection.setAutoCommit(true);
      connection.close();
    }
  }
}
