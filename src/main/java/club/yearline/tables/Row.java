package club.yearline.tables;

import club.yearline.effectivity.Values;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;

/**
 * A row of a table, by column name. It answers for cells at fault too, so that reading can go on
 * and find what else is wrong; such a package is never stored.
 */
public final class Row {

  private final Map<String, Integer> columns;
  private final IntFunction<String> cells;
  private final int line;

  /**
   * A row.
   *
   * @param columns where each column stands
   * @param cells the cell that stands there
   * @param line the line on which the row begins, from 1
   */
  public Row(Map<String, Integer> columns, IntFunction<String> cells, int line) {
    this.columns = columns;
    this.cells = cells;
    this.line = line;
  }

  /** The line on which it begins, from 1. */
  public int line() {
    return line;
  }

  /** The text of a cell, empty where it is missing. */
  public String text(String column) {
    Integer at = columns.get(column);
    return at == null ? "" : cells.apply(at);
  }

  @Nullable String textOrNull(String column) {
    String text = text(column);
    return text.isEmpty() ? null : text;
  }

  @Nullable Integer whole(String column) {
    return FieldType.whole(text(column)).map(BigDecimal::intValue).orElse(null);
  }

  @Nullable BigDecimal number(String column) {
    return Values.number(text(column)).orElse(null);
  }

  @Nullable LocalDate day(String column) {
    return FieldType.day(text(column)).orElse(null);
  }

  boolean flag(String column) {
    return FieldType.isTrue(text(column));
  }

  /** The constant whose word stands in a cell; the first one where none does. */
  <E extends Enum<E>> E word(String column, Class<E> kind) {
    String name = text(column).toUpperCase(Locale.ROOT).replace('-', '_');
    for (E constant : kind.getEnumConstants()) {
      if (constant.name().equals(name)) {
        return constant;
      }
    }
    return kind.getEnumConstants()[0];
  }

  /** The cells of the given columns, joined by {@code /} as findings name records. */
  public String joined(List<String> names) {
    if (names.size() == 1) {
      return text(names.get(0));
    }
    return String.join("/", names.stream().map(this::text).toList());
  }

  /** The one text by which rows with equal primary keys are equal. */
  public String key(TableSchema table) {
    if (table.primaryKey().size() == 1) {
      return text(table.primaryKey().get(0).name());
    }
    return String.join(
        "/", table.primaryKey().stream().map(f -> f.canonical(text(f.name()))).toList());
  }
}
