package club.yearline.tables;

import club.yearline.effectivity.Entry;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads a sheet into the entry that it makes, and finds every cell that cannot be read. */
public final class SheetReader {

  /**
   * A cell at fault.
   *
   * @param table resource name of its table
   * @param row which row of the table, from 0
   * @param column its column
   * @param complaint what is wrong
   */
  public record Fault(String table, int row, String column, Complaint complaint) {}

  private final Sheet sheet;
  private final List<Fault> faults = new ArrayList<>();
  private final Draft draft = new Draft();

  private SheetReader(Sheet sheet) {
    this.sheet = sheet;
  }

  /**
   * What was read.
   *
   * @param made the entry; empty where any cell is at fault
   * @param faults every cell at fault, in the order of the sheet
   */
  public record Reading(Optional<Entry> made, List<Fault> faults) {}

  /** Reads a sheet. */
  public static Reading read(Sheet sheet) {
    return new SheetReader(sheet).read();
  }

  private Reading read() {
    List<TableSchema> tables = EntryTables.of(sheet.kind());
    tables.forEach(this::check);
    if (!faults.isEmpty()) {
      return new Reading(Optional.empty(), List.copyOf(faults));
    }
    for (String name : Draft.ORDER) {
      tables.stream().filter(t -> t.name().equals(name)).forEach(this::add);
    }
    return new Reading(Optional.of(draft.entries().get(0)), List.of());
  }

  private void check(TableSchema table) {
    List<Map<String, String>> rows = sheet.rows(table.name());
    if (table.name().equals(sheet.kind().resource())) {
      checkOwn(table, rows.isEmpty() ? Map.of() : rows.get(0));
      return;
    }
    Set<String> keys = new HashSet<>();
    for (int i = 0; i < rows.size(); i++) {
      checkCells(table, i, rows.get(i));
      if (!keys.add(key(table, rows.get(i)))) {
        List<String> by = EntryTables.rowKey(table, sheet.kind());
        faults.add(new Fault(table.name(), i, by.get(by.size() - 1), Complaint.of("repeated-row")));
      }
    }
  }

  private void checkOwn(TableSchema table, Map<String, String> row) {
    table.fields().stream()
        .filter(f -> f.name().equals("key"))
        .forEach(f -> check(table, 0, f, sheet.key()));
    checkCells(table, 0, row);
  }

  private void checkCells(TableSchema table, int at, Map<String, String> row) {
    EntryTables.typed(table, sheet.kind())
        .forEach(f -> check(table, at, f, row.getOrDefault(f.name(), "")));
  }

  private void check(TableSchema table, int at, Field field, String cell) {
    field.check(cell).ifPresent(c -> faults.add(new Fault(table.name(), at, field.name(), c)));
  }

  private String key(TableSchema table, Map<String, String> row) {
    return owned(table, row).key(table);
  }

  private void add(TableSchema table) {
    if (table.name().equals(sheet.kind().resource()) && sheet.rows(table.name()).isEmpty()) {
      draft.add(table.name(), owned(table, Map.of()));
    }
    sheet.rows(table.name()).forEach(row -> draft.add(table.name(), owned(table, row)));
  }

  /** The row with the cells by which it names the entry as its owner. */
  private Row owned(TableSchema table, Map<String, String> row) {
    Map<String, String> cells = new LinkedHashMap<>(row);
    for (String column : EntryTables.owner(table.name(), sheet.kind())) {
      cells.put(column, column.equals("record_kind") ? sheet.kind().code() : sheet.key());
    }
    List<String> header = table.header();
    Map<String, Integer> columns = new HashMap<>();
    for (int i = 0; i < header.size(); i++) {
      columns.put(header.get(i), i);
    }
    return new Row(columns, i -> cells.getOrDefault(header.get(i), ""), 1);
  }
}
