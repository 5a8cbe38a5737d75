package club.yearline.benchmarks;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The question as one SQL query, prepared once on a connection that stays open. */
final class Peer implements AutoCloseable {

  /** What the query reads by; the application reads whole revisions and has no such indexes. */
  private static final List<String> INDEXES =
      List.of(
          "create index on cut_in (variant_id)",
          "create index on series_version (prefix)",
          "create index on serial_block_version (series_id, first_serial collate \"C\")",
          "create index on serial_block_version (variant_id, series_id, last_serial collate \"C\")",
          "analyze");

  private final Connection connection;
  private final PreparedStatement query;

  Peer(String url) throws SQLException, IOException {
    connection = DriverManager.getConnection(url);
    query = connection.prepareStatement(text());
  }

  private static String text() throws IOException {
    try (InputStream in = Peer.class.getResourceAsStream("/peer.sql")) {
      if (in == null) {
        throw new IOException("peer.sql is missing");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** Adds the indexes that the query needs, and lets the server learn the sizes of its tables. */
  static void prepare(String url) throws SQLException {
    try (Connection connection = DriverManager.getConnection(url);
        var statement = connection.createStatement()) {
      for (String each : INDEXES) {
        statement.execute(each);
      }
    }
  }

  /** By feature, the changes that decide; those possible for want of records with a mark. */
  Map<String, List<String>> ask(String serial) throws SQLException {
    query.setString(1, serial);
    Map<String, List<String>> deciding = new TreeMap<>();
    try (ResultSet rows = query.executeQuery()) {
      while (rows.next()) {
        List<String> changes = deciding.computeIfAbsent(rows.getString(1), k -> new ArrayList<>());
        if (changes.isEmpty() && rows.getBoolean(4)) {
          changes.add("");
        }
        changes.add(mark(rows.getString(2), rows.getBoolean(3)));
      }
    }
    return deciding;
  }

  static String mark(String change, boolean open) {
    return open ? change + "?" : change;
  }

  @Override
  public void close() throws SQLException {
    connection.close();
  }
}
