package club.yearline.corrections;

import club.yearline.corrections.Clash.Side;
import club.yearline.effectivity.EntryKind;
import club.yearline.tables.EntryTables;
import club.yearline.tables.Field;
import club.yearline.tables.Sheet;
import club.yearline.tables.TableSchema;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What comes of a correction's entry and of the published one, when both have moved on from where
 * the correction began. What only one side changed is taken from it; a change that both made alike
 * is no clash.
 *
 * @param result the entry; null where it is withdrawn. Clashes that nobody has decided stand in it
 *     as the correction has them
 * @param clashes what both changed otherwise and nobody has decided
 */
record Merge(@Nullable Sheet result, List<Clash> clashes) {

  private static final String WHOLE = "";

  Merge {
    clashes = List.copyOf(clashes);
  }

  /** Merges without an answer to any clash. */
  static Merge of(@Nullable Sheet base, @Nullable Sheet mine, @Nullable Sheet theirs) {
    return of(base, mine, theirs, clash -> null);
  }

  /**
   * Merges.
   *
   * @param base the entry when the correction began; null where there was none
   * @param mine the entry as the correction has it; null where it withdraws it
   * @param theirs the entry as published now; null where there is none
   * @param answers which side shall stand, or null where that is not decided
   */
  static Merge of(
      @Nullable Sheet base,
      @Nullable Sheet mine,
      @Nullable Sheet theirs,
      Function<Clash, @Nullable Side> answers) {
    if (Objects.equals(theirs, base) || Objects.equals(mine, theirs)) {
      return new Merge(mine, List.of());
    }
    if (Objects.equals(mine, base)) {
      return new Merge(theirs, List.of());
    }
    if (mine == null || theirs == null) {
      return whole(base, mine, theirs, answers);
    }
    Sheet from = base == null ? Sheet.blank(mine.kind(), mine.key()) : base;
    return new Work(from, mine, theirs, answers).merge();
  }

  private static Merge whole(
      @Nullable Sheet base,
      @Nullable Sheet mine,
      @Nullable Sheet theirs,
      Function<Clash, @Nullable Side> answers) {
    Clash clash = new Clash(WHOLE, WHOLE, WHOLE, text(base), text(mine), text(theirs));
    Side side = answers.apply(clash);
    return new Merge(
        side == Side.THEIRS ? theirs : mine, side == null ? List.of(clash) : List.of());
  }

  private static @Nullable String text(@Nullable Sheet sheet) {
    return sheet == null ? null : sheet.key();
  }

  /** The merging of two sheets, table by table. */
  private static final class Work {

    private final Sheet base;
    private final Sheet mine;
    private final Sheet theirs;
    private final Function<Clash, @Nullable Side> answers;
    private final List<Clash> clashes = new ArrayList<>();

    Work(Sheet base, Sheet mine, Sheet theirs, Function<Clash, @Nullable Side> answers) {
      this.base = base;
      this.mine = mine;
      this.theirs = theirs;
      this.answers = answers;
    }

    Merge merge() {
      EntryKind kind = mine.kind();
      Map<String, List<Map<String, String>>> tables = new LinkedHashMap<>();
      EntryTables.of(kind).forEach(table -> tables.put(table.name(), rows(table)));
      return new Merge(Sheet.of(kind, mine.key(), tables), clashes);
    }

    /** The rows of one table: theirs in their order, then those that only mine adds. */
    private List<Map<String, String>> rows(TableSchema table) {
      Map<String, Map<String, String>> from = byKey(table, base);
      Map<String, Map<String, String>> ours = byKey(table, mine);
      Map<String, Map<String, String>> now = byKey(table, theirs);
      if (now.equals(from)) {
        return mine.rows(table.name());
      }
      Set<String> keys = new LinkedHashSet<>(now.keySet());
      keys.addAll(ours.keySet());
      List<Map<String, String>> rows = new ArrayList<>();
      for (String key : keys) {
        Map<String, String> row = row(table, key, from.get(key), ours.get(key), now.get(key));
        if (row != null) {
          rows.add(row);
        }
      }
      return rows;
    }

    private @Nullable Map<String, String> row(
        TableSchema table,
        String key,
        @Nullable Map<String, String> from,
        @Nullable Map<String, String> ours,
        @Nullable Map<String, String> now) {
      if (Objects.equals(now, from) || Objects.equals(ours, now)) {
        return ours;
      }
      if (Objects.equals(ours, from)) {
        return now;
      }
      if (ours == null || now == null) {
        Clash clash =
            new Clash(
                table.name(), key, WHOLE, text(table, from), text(table, ours), text(table, now));
        return decide(clash) == Side.THEIRS ? now : ours;
      }
      return cells(table, key, from == null ? Map.of() : from, ours, now);
    }

    private Map<String, String> cells(
        TableSchema table,
        String key,
        Map<String, String> from,
        Map<String, String> ours,
        Map<String, String> now) {
      Map<String, String> row = new LinkedHashMap<>();
      for (Field field : EntryTables.typed(table, mine.kind())) {
        String column = field.name();
        String was = from.getOrDefault(column, "");
        String my = ours.getOrDefault(column, "");
        String their = now.getOrDefault(column, "");
        boolean clashing = !my.equals(their) && !my.equals(was) && !their.equals(was);
        boolean takeTheirs =
            clashing
                ? decide(new Clash(table.name(), key, column, was, my, their)) == Side.THEIRS
                : my.equals(was);
        row.put(column, takeTheirs ? their : my);
      }
      return row;
    }

    private @Nullable Side decide(Clash clash) {
      Side side = answers.apply(clash);
      if (side == null) {
        clashes.add(clash);
      }
      return side;
    }

    /** Rows by what tells them apart; of rows that nothing tells apart, the first. */
    private static Map<String, Map<String, String>> byKey(TableSchema table, Sheet sheet) {
      Map<String, Map<String, String>> rows = new LinkedHashMap<>();
      for (Map<String, String> row : sheet.rows(table.name())) {
        rows.putIfAbsent(EntryTables.keyOf(table, sheet.kind(), row), row);
      }
      return rows;
    }

    private static @Nullable String text(TableSchema table, @Nullable Map<String, String> row) {
      return row == null
          ? null
          : String.join(
              ", ",
              table.header().stream()
                  .map(c -> row.getOrDefault(c, ""))
                  .filter(c -> !c.isEmpty())
                  .toList());
    }
  }
}
