package club.yearline.upkeep;

import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A table, with its columns in a fixed order.
 *
 * @param name its name
 * @param columns its columns by name, so that equal rows make equal lines on every database
 * @param counter the column whose values the database gives by itself; empty for none
 */
record Table(String name, List<Column> columns, List<String> counter) {

  /**
   * A column.
   *
   * @param name its name
   * @param kind how its values are written
   */
  record Column(String name, CellKind kind) {}

  String select() {
    return "select " + names() + " from " + quoted(name);
  }

  String insert() {
    return "insert into %s (%s) values (%s)"
        .formatted(
            quoted(name), names(), String.join(", ", Collections.nCopies(columns.size(), "?")));
  }

  private String names() {
    return columns.stream().map(c -> quoted(c.name())).collect(Collectors.joining(", "));
  }

  static String quoted(String name) {
    return '"' + name + '"';
  }
}
