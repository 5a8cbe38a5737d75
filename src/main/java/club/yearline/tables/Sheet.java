package club.yearline.tables;

import club.yearline.effectivity.Entry;
import club.yearline.effectivity.EntryKind;
import club.yearline.effectivity.Records;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One entry as rows of the format's tables: one row of its kind's own table, and the rows it holds
 * in others. Cells are texts as typed, right or wrong; {@link SheetReader} says what they make.
 *
 * <p>The cells by which a row names the entry as its owner are left out: they are the entry's kind
 * and key. Cells without text are left out too, so that equal entries have equal sheets.
 */
public final class Sheet {

  private final EntryKind kind;
  private final String key;
  private final Map<String, List<Map<String, String>>> tables;

  private Sheet(EntryKind kind, String key, Map<String, List<Map<String, String>>> tables) {
    this.kind = kind;
    this.key = key;
    this.tables = tables;
  }

  /** The sheet of an entry as recorded, rows in its order. */
  public static Sheet of(Entry entry) {
    Records alone = Records.of(List.of(entry), List.of());
    Map<String, List<Map<String, String>>> tables = new LinkedHashMap<>();
    for (TableSchema table : EntryTables.of(entry.kind())) {
      tables.put(
          table.name(), Rows.of(table.name(), alone).map(cells -> named(table, cells)).toList());
    }
    return of(entry.kind(), entry.key(), tables);
  }

  /**
   * A sheet of these rows.
   *
   * @param tables rows by resource name of their table; tables and columns that an entry of this
   *     kind does not have are left out
   */
  public static Sheet of(
      EntryKind kind, String key, Map<String, List<Map<String, String>>> tables) {
    Map<String, List<Map<String, String>>> kept = new LinkedHashMap<>();
    for (TableSchema table : EntryTables.of(kind)) {
      List<Map<String, String>> rows =
          tables.getOrDefault(table.name(), List.of()).stream()
              .map(row -> cells(table, kind, row))
              .filter(row -> !row.isEmpty())
              .toList();
      kept.put(table.name(), rows);
    }
    return new Sheet(kind, key, Collections.unmodifiableMap(kept));
  }

  /** A sheet without a single cell. */
  public static Sheet blank(EntryKind kind, String key) {
    return of(kind, key, Map.of());
  }

  /** What kind of entry it is. */
  public EntryKind kind() {
    return kind;
  }

  /** The entry's key. */
  public String key() {
    return key;
  }

  /** Its rows by resource name of their table, each by column name. */
  public Map<String, List<Map<String, String>>> tables() {
    return tables;
  }

  /** Its rows in one table. */
  public List<Map<String, String>> rows(String table) {
    return tables.getOrDefault(table, List.of());
  }

  /** The cell of its row in its kind's own table; empty where there is no text. */
  public String cell(String column) {
    List<Map<String, String>> own = rows(kind.resource());
    return own.isEmpty() ? "" : own.get(0).getOrDefault(column, "");
  }

  /** The same with other rows in one table. */
  public Sheet with(String table, List<Map<String, String>> rows) {
    Map<String, List<Map<String, String>>> all = new LinkedHashMap<>(tables);
    all.put(table, rows);
    return of(kind, key, all);
  }

  /** The same with one more row in a table. */
  public Sheet plus(String table, Map<String, String> row) {
    List<Map<String, String>> rows = new ArrayList<>(rows(table));
    rows.add(row);
    return with(table, rows);
  }

  private static Map<String, String> named(TableSchema table, String[] cells) {
    Map<String, String> row = new LinkedHashMap<>();
    for (int i = 0; i < cells.length; i++) {
      row.put(table.fields().get(i).name(), cells[i]);
    }
    return row;
  }

  private static Map<String, String> cells(
      TableSchema table, EntryKind kind, Map<String, String> row) {
    Map<String, String> cells = new LinkedHashMap<>();
    for (Field field : EntryTables.typed(table, kind)) {
      String cell = row.getOrDefault(field.name(), "");
      if (!cell.isEmpty()) {
        cells.put(field.name(), cell);
      }
    }
    return Collections.unmodifiableMap(cells);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Sheet sheet
        && kind == sheet.kind
        && key.equals(sheet.key)
        && tables.equals(sheet.tables);
  }

  @Override
  public int hashCode() {
    return Objects.hash(kind, key, tables);
  }

  @Override
  public String toString() {
    return kind.code() + " " + key + " " + tables;
  }
}
