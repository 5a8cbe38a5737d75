package club.yearline.corrections;

import club.yearline.effectivity.EntryKind;
import club.yearline.tables.EntryTables;
import club.yearline.tables.Field;
import club.yearline.tables.Sheet;
import club.yearline.tables.TableSchema;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.springframework.util.MultiValueMap;

/**
 * An entry as a form sends it: a field for each cell, named {@code TABLE.ROW.COLUMN}, and for each
 * row {@code TABLE.ROW.remove}. Rows are numbered in any way; those without text are left out.
 */
final class SheetForm {

  /** The most rows of a table that a form takes. */
  static final int MOST_ROWS = 400;

  private SheetForm() {}

  /** Reads what was typed, right or wrong. */
  static Sheet read(EntryKind kind, String key, MultiValueMap<String, String> parameters) {
    Map<String, List<Map<String, String>>> tables = new LinkedHashMap<>();
    for (TableSchema table : EntryTables.of(kind)) {
      tables.put(table.name(), rows(table, kind, parameters));
    }
    return Sheet.of(kind, key, tables);
  }

  /** The name of the field for a cell. */
  static String name(String table, int row, String column) {
    return table + "." + row + "." + column;
  }

  private static List<Map<String, String>> rows(
      TableSchema table, EntryKind kind, MultiValueMap<String, String> parameters) {
    List<Map<String, String>> rows = new ArrayList<>();
    for (int number : numbers(table.name(), parameters.keySet())) {
      if (parameters.getFirst(name(table.name(), number, "remove")) == null) {
        rows.add(row(table, kind, number, parameters));
      }
    }
    return rows;
  }

  private static Map<String, String> row(
      TableSchema table, EntryKind kind, int number, MultiValueMap<String, String> parameters) {
    Map<String, String> row = new LinkedHashMap<>();
    for (Field field : EntryTables.typed(table, kind)) {
      String typed = parameters.getFirst(name(table.name(), number, field.name()));
      row.put(field.name(), typed == null ? "" : tidy(typed));
    }
    return isUntouched(table.name(), row) ? Map.of() : row;
  }

  /** A select always sends something, so a row offered in vain is not empty. */
  private static boolean isUntouched(String table, Map<String, String> row) {
    Set<String> preset =
        table.equals("citations") ? Set.of("key", "stance") : Set.of("fit", "relation");
    return row.entrySet().stream()
        .allMatch(cell -> cell.getValue().isEmpty() || preset.contains(cell.getKey()));
  }

  private static Set<Integer> numbers(String table, Set<String> names) {
    Set<Integer> numbers = new TreeSet<>();
    for (String name : names) {
      String[] parts = name.split("\\.", -1);
      if (parts.length == 3 && parts[0].equals(table) && parts[1].matches("[0-9]{1,3}")) {
        int number = Integer.parseInt(parts[1]);
        if (number < MOST_ROWS) {
          numbers.add(number);
        }
      }
    }
    return numbers;
  }

  /** Browsers send line ends as the network does; records hold them as text files do. */
  private static String tidy(String typed) {
    return typed.replace("\r\n", "\n").replace('\r', '\n').strip();
  }
}
