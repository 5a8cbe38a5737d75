package club.yearline.exchange;

import club.yearline.effectivity.Finding;
import club.yearline.tables.Orphan;
import club.yearline.tables.Schemas;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A problem of which the row is known and the line is not yet.
 *
 * @param table resource name of the table
 * @param by columns that tell the row
 * @param everyRow whether every such row is meant, or only the first
 * @param key the cells of these columns, joined by {@code /}
 * @param column the column at fault; null where the whole row is meant
 * @param value the value at fault; null where there is none
 * @param code what it is
 * @param level how grave it is
 * @param arguments what its text names
 */
record Lookup(
    String table,
    List<String> by,
    boolean everyRow,
    String key,
    @Nullable String column,
    @Nullable String value,
    String code,
    Finding.Level level,
    List<String> arguments) {

  /** Asks for the row that a finding is about. */
  static Lookup of(Finding finding) {
    return new Lookup(
        finding.table(),
        Schemas.standard().table(finding.table()).keyColumns(),
        false,
        finding.record(),
        finding.field(),
        finding.value(),
        finding.code().code(),
        finding.code().level(),
        finding.arguments());
  }

  /** Asks for the rows that name a parent that does not exist. */
  static Lookup of(Orphan orphan) {
    String parent = orphan.parent();
    List<String> by = orphan.by();
    String name = parent.substring(parent.indexOf('/') + 1);
    return new Lookup(
        orphan.table(),
        by,
        true,
        parent,
        by.get(by.size() - 1),
        name,
        Finding.Code.UNKNOWN_REFERENCE.code(),
        Finding.Level.ERROR,
        List.of());
  }

  /** The problem, at the line where its row was found, or at none. */
  PackageProblem at(@Nullable Integer line) {
    return new PackageProblem(
        Schemas.standard().table(table).path(),
        line,
        column,
        value == null && line == null ? key : value,
        code,
        level,
        arguments);
  }
}
