package club.yearline.tables;

import club.yearline.effectivity.EntryKind;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which tables hold an entry of a kind, and by which columns rows name it as theirs. */
public final class EntryTables {

  private static final String CITATIONS = "citations";

  private EntryTables() {}

  /** The tables of a kind: its own first, those with citations last. */
  public static List<TableSchema> of(EntryKind kind) {
    return names(kind).stream().map(Schemas.standard()::table).toList();
  }

  /** The columns of a table that are typed for an entry; the others name the entry itself. */
  public static List<Field> typed(TableSchema table, EntryKind kind) {
    Set<String> owner = owner(table.name(), kind);
    return table.fields().stream().filter(f -> !owner.contains(f.name())).toList();
  }

  /** The columns that tell the rows of one entry apart; none in its kind's own table. */
  public static List<String> rowKey(TableSchema table, EntryKind kind) {
    Set<String> owner = owner(table.name(), kind);
    return table.keyColumns().stream().filter(c -> !owner.contains(c)).toList();
  }

  /** The cells of a row that tell it from the entry's others in the table, joined. */
  public static String keyOf(TableSchema table, EntryKind kind, Map<String, String> row) {
    return String.join(
        "/", rowKey(table, kind).stream().map(c -> row.getOrDefault(c, "")).toList());
  }

  private static List<String> names(EntryKind kind) {
    return switch (kind) {
      case FAMILY -> List.of("families", CITATIONS);
      case VARIANT -> List.of("variants", "variant-names", "production-runs", "lineage", CITATIONS);
      case SERIES -> List.of("series", CITATIONS);
      case SERIAL_BLOCK -> List.of("serial-blocks", CITATIONS);
      case FEATURE -> List.of("features", "feature-values", CITATIONS);
      case CHANGE -> List.of("changes", "change-offerings", "cut-ins", CITATIONS);
      case RETROFIT -> List.of("retrofits", CITATIONS);
      case SOURCE -> List.of("sources");
    };
  }

  static Set<String> owner(String table, EntryKind kind) {
    return switch (table) {
      case "variant-names", "production-runs" -> Set.of("variant");
      case "lineage" -> Set.of("to_variant");
      case "feature-values" -> Set.of("feature");
      case "change-offerings", "cut-ins" -> Set.of("change");
      case CITATIONS -> Set.of("record_kind", "record");
      default -> table.equals(kind.resource()) ? Set.of("key") : Set.of();
    };
  }
}
