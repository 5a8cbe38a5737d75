package club.yearline.upkeep;

import java.math.BigDecimal;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Base64;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** How the values of a column are written as text and read again, alike on every database. */
enum CellKind {
  WHOLE {
    @Override
    @Nullable String read(ResultSet row, int column) throws SQLException {
      long value = row.getLong(column);
      return row.wasNull() ? null : Long.toString(value);
    }

    @Override
    void bind(PreparedStatement insert, int column, String text) throws SQLException {
      insert.setLong(column, Long.parseLong(text));
    }
  },
  DECIMAL {
    @Override
    @Nullable String read(ResultSet row, int column) throws SQLException {
      BigDecimal value = row.getBigDecimal(column);
      return value == null ? null : value.toPlainString();
    }

    @Override
    void bind(PreparedStatement insert, int column, String text) throws SQLException {
      insert.setBigDecimal(column, new BigDecimal(text));
    }
  },
  TRUTH {
    @Override
    @Nullable String read(ResultSet row, int column) throws SQLException {
      boolean value = row.getBoolean(column);
      return row.wasNull() ? null : Boolean.toString(value);
    }

    @Override
    void bind(PreparedStatement insert, int column, String text) throws SQLException {
      insert.setBoolean(column, Boolean.parseBoolean(text));
    }
  },
  DAY {
    @Override
    @Nullable String read(ResultSet row, int column) throws SQLException {
      LocalDate value = row.getObject(column, LocalDate.class);
      return value == null ? null : value.toString();
    }

    @Override
    void bind(PreparedStatement insert, int column, String text) throws SQLException {
      insert.setObject(column, LocalDate.parse(text));
    }
  },
  MOMENT {
    @Override
    @Nullable String read(ResultSet row, int column) throws SQLException {
      OffsetDateTime value = row.getObject(column, OffsetDateTime.class);
      return value == null ? null : value.withOffsetSameInstant(ZoneOffset.UTC).toString();
    }

    @Override
    void bind(PreparedStatement insert, int column, String text) throws SQLException {
      insert.setObject(column, OffsetDateTime.parse(text));
    }
  },
  BYTES {
    @Override
    @Nullable String read(ResultSet row, int column) throws SQLException {
      byte[] value = row.getBytes(column);
      return value == null ? null : Base64.getEncoder().encodeToString(value);
    }

    @Override
    void bind(PreparedStatement insert, int column, String text) throws SQLException {
      insert.setBytes(column, Base64.getDecoder().decode(text));
    }
  },
  NAME {
    @Override
    @Nullable String read(ResultSet row, int column) throws SQLException {
      UUID value = row.getObject(column, UUID.class);
      return value == null ? null : value.toString();
    }

    @Override
    void bind(PreparedStatement insert, int column, String text) throws SQLException {
      insert.setObject(column, UUID.fromString(text));
    }
  },
  TEXT {
    @Override
    @Nullable String read(ResultSet row, int column) throws SQLException {
      return row.getString(column);
    }

    @Override
    void bind(PreparedStatement insert, int column, String text) throws SQLException {
      insert.setString(column, text);
    }
  };

  /** The value of a row's column as text; null for none. */
  abstract @Nullable String read(ResultSet row, int column) throws SQLException;

  /** Gives an insertion the value that was written as this text. */
  abstract void bind(PreparedStatement insert, int column, String text) throws SQLException;

  /**
   * The kind of a column.
   *
   * @param type one of {@link Types}
   * @param name the database's own name of the type
   * @throws IllegalStateException if no column of ours was of such a type so far
   */
  static CellKind of(String column, int type, String name) {
    if (name.equalsIgnoreCase("uuid")) {
      return NAME;
    }
    return switch (type) {
      case Types.BIGINT, Types.INTEGER, Types.SMALLINT -> WHOLE;
      case Types.NUMERIC, Types.DECIMAL -> DECIMAL;
      case Types.BOOLEAN, Types.BIT -> TRUTH;
      case Types.DATE -> DAY;
      case Types.TIMESTAMP, Types.TIMESTAMP_WITH_TIMEZONE -> MOMENT;
      case Types.BINARY, Types.VARBINARY, Types.LONGVARBINARY -> BYTES;
      case Types.VARCHAR, Types.CHAR, Types.LONGVARCHAR, Types.CLOB -> TEXT;
      default -> throw new IllegalStateException("Column " + column + " is of SQL type " + type);
    };
  }
}
