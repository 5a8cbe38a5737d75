package club.yearline.upkeep;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.json.JsonMapper;

/** A row as a line: a JSON array of texts and nulls. */
final class Lines {

  static final JsonMapper JSON = JsonMapper.builder().build();

  private Lines() {}

  static String of(Table table, ResultSet row) throws SQLException {
    @Nullable String[] cells = new @Nullable String[table.columns().size()];
    for (int i = 0; i < cells.length; i++) {
      cells[i] = table.columns().get(i).kind().read(row, i + 1);
    }
    return JSON.writeValueAsString(cells);
  }

  static void bind(Table table, String line, PreparedStatement insert) throws SQLException {
    @Nullable String[] cells = JSON.readValue(line, String[].class);
    if (cells.length != table.columns().size()) {
      throw new IllegalStateException(table.name() + ": a row of " + cells.length + " cells");
    }
    for (int i = 0; i < cells.length; i++) {
      String cell = cells[i];
      if (cell == null) {
        insert.setNull(i + 1, Types.NULL);
      } else {
        table.columns().get(i).kind().bind(insert, i + 1, cell);
      }
    }
  }
}
