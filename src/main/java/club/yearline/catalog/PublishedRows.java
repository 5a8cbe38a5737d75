package club.yearline.catalog;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.SQLIntegrityConstraintViolationException;
import java.util.Arrays;
import org.h2.api.Trigger;

/**
 * The trigger that keeps published rows as they were published, on H2; the migrations name it. A
 * version may be ended once. Public because the database creates it.
 */
public class PublishedRows implements Trigger {

  private static final int NO_SUCH_COLUMN = -1;

  private String table = "";
  private int until = NO_SUCH_COLUMN;

  @Override
  public void init(
      Connection connection, String schema, String trigger, String table, boolean before, int type)
      throws SQLException {
    this.table = table;
    try (ResultSet column =
        connection.getMetaData().getColumns(null, schema, table, "until_revision")) {
      until = column.next() ? column.getInt("ORDINAL_POSITION") - 1 : NO_SUCH_COLUMN;
    }
  }

  @Override
  public void fire(Connection connection, Object[] oldRow, Object[] newRow) throws SQLException {
    if (newRow == null || !endsVersion(oldRow, newRow)) {
      throw new SQLIntegrityConstraintViolationException(
          "Published rows of " + table + " are never changed or deleted", "23000");
    }
  }

  private boolean endsVersion(Object[] oldRow, Object[] newRow) {
    if (until == NO_SUCH_COLUMN || !Integer.valueOf(VersionSpan.OPEN).equals(oldRow[until])) {
      return false;
    }
    Object[] ended = oldRow.clone();
    ended[until] = newRow[until];
    return Arrays.deepEquals(ended, newRow);
  }
}
