package club.yearline.exchange;

import club.yearline.tables.Row;
import club.yearline.tables.Schemas;
import club.yearline.tables.TableSchema;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds the lines of rows by reading tables once more. Remembering every row's line while a package
 * is read would cost more memory than its few problems are worth.
 */
final class Places {

  private final PackageFiles files;

  Places(PackageFiles files) {
    this.files = files;
  }

  /** Adds the problems, each at the line of its row. */
  void locate(List<Lookup> lookups, Problems problems) throws IOException {
    Map<String, List<Lookup>> byTable = new LinkedHashMap<>();
    lookups.forEach(l -> byTable.computeIfAbsent(l.table(), k -> new ArrayList<>()).add(l));
    for (Map.Entry<String, List<Lookup>> table : byTable.entrySet()) {
      locateIn(Schemas.standard().table(table.getKey()), table.getValue(), problems);
    }
  }

  private void locateIn(TableSchema table, List<Lookup> lookups, Problems problems)
      throws IOException {
    Map<List<String>, Map<String, List<Lookup>>> wanted = new HashMap<>();
    for (Lookup lookup : lookups) {
      wanted
          .computeIfAbsent(lookup.by(), k -> new LinkedHashMap<>())
          .computeIfAbsent(lookup.key(), k -> new ArrayList<>())
          .add(lookup);
    }
    if (files.names().contains(table.path())) {
      new CsvTable(table, new Problems())
          .read(
              files,
              new Budget(files.packageName(), Budget.MOST),
              row -> wanted.forEach((by, keys) -> match(table, row, by, keys, problems)));
    }
    wanted.values().forEach(keys -> keys.values().forEach(l -> unplaced(l, problems)));
  }

  private static void match(
      TableSchema table,
      Row row,
      List<String> by,
      Map<String, List<Lookup>> keys,
      Problems problems) {
    String key = row.joined(by);
    place(row, key, keys, problems);
    // Findings name numbers by value where the row may have them otherwise.
    String canonical = by.equals(table.keyColumns()) ? row.key(table) : key;
    if (!canonical.equals(key)) {
      place(row, canonical, keys, problems);
    }
  }

  private static void place(
      Row row, String key, Map<String, List<Lookup>> keys, Problems problems) {
    List<Lookup> found = keys.getOrDefault(key, List.of());
    found.forEach(l -> problems.add(l.at(row.line())));
    // A row that repeats a key was not read, so what is found is about the first.
    if (!found.isEmpty() && !found.get(0).everyRow()) {
      keys.remove(key);
    }
  }

  private static void unplaced(List<Lookup> lookups, Problems problems) {
    lookups.stream().filter(l -> !l.everyRow()).forEach(l -> problems.add(l.at(null)));
  }
}
