package club.yearline.corrections;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.corrections.Clash.Side;
import club.yearline.effectivity.EntryKind;
import club.yearline.tables.EntryTables;
import club.yearline.tables.Field;
import club.yearline.tables.Sheet;
import club.yearline.tables.TableSchema;
import club.yearline.testing.Dice;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Three-way merging of one entry, against its laws on random sheets. */
class MergeTest {

  static LongStream seeds() {
    return LongStream.range(0, 400);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void whatOneSideLeftAloneIsTakenFromTheOther(long seed) {
    Dice dice = new Dice(seed);
    Sheet base = sheet(dice);
    Sheet moved = edited(base, dice);
    assertThat(Merge.of(base, base, moved)).isEqualTo(new Merge(moved, List.of()));
    assertThat(Merge.of(base, moved, base)).isEqualTo(new Merge(moved, List.of()));
    assertThat(Merge.of(base, moved, moved)).isEqualTo(new Merge(moved, List.of()));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everyCellOfAMergeIsWhatASlowReadingOfTheRulesSays(long seed) {
    Dice dice = new Dice(seed);
    Sheet base = sheet(dice);
    Sheet mine = edited(base, dice);
    Sheet theirs = edited(base, dice);
    Merge merge = Merge.of(base, mine, theirs);
    Map<String, String> was = flat(base);
    Map<String, String> my = flat(mine);
    Map<String, String> their = flat(theirs);
    Map<String, String> made = flat(merge.result());
    List<String> cells = new ArrayList<>(was.keySet());
    cells.addAll(my.keySet());
    cells.addAll(their.keySet());
    List<String> clashing = merge.clashes().stream().map(Clash::id).toList();
    for (String cell : cells) {
      String row = cell.substring(0, cell.lastIndexOf('|')) + "|";
      if (clashing.contains(row)) {
        assertThat(made.get(cell)).as(cell).isEqualTo(my.get(cell));
        continue;
      }
      String b = was.get(cell);
      String m = my.get(cell);
      String t = their.get(cell);
      boolean mineMoved = !java.util.Objects.equals(m, b);
      boolean theirsMoved = !java.util.Objects.equals(t, b);
      if (mineMoved && theirsMoved && !java.util.Objects.equals(m, t)) {
        assertThat(clashing).contains(cell);
      }
      assertThat(made.get(cell)).as(cell).isEqualTo(mineMoved ? m : t);
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void bothSidesSeeTheSameClashes(long seed) {
    Dice dice = new Dice(seed);
    Sheet base = sheet(dice);
    Sheet mine = edited(base, dice);
    Sheet theirs = edited(base, dice);
    assertThat(Merge.of(base, mine, theirs).clashes())
        .extracting(Clash::id)
        .containsExactlyInAnyOrderElementsOf(
            Merge.of(base, theirs, mine).clashes().stream().map(Clash::id).toList());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void answeredClashesAreClashesNoMore(long seed) {
    Dice dice = new Dice(seed);
    Sheet base = sheet(dice);
    Sheet mine = edited(base, dice);
    Sheet theirs = edited(base, dice);
    Merge open = Merge.of(base, mine, theirs);
    Merge kept = Merge.of(base, mine, theirs, clash -> Side.MINE);
    Merge taken = Merge.of(base, mine, theirs, clash -> Side.THEIRS);
    assertThat(kept).isEqualTo(new Merge(open.result(), List.of()));
    assertThat(taken.clashes()).isEmpty();
    Map<String, String> made = flat(taken.result());
    for (Clash clash : open.clashes()) {
      if (!clash.column().isEmpty()) {
        String theirsText = clash.theirs();
        assertThat(made.getOrDefault(clash.id(), "")).isEqualTo(theirsText);
      }
    }
  }

  @Test
  void withdrawingWhatSomebodyElseChangedIsAskedAbout() {
    Sheet base = sheet(new Dice(1));
    Sheet moved = base.with("changes", List.of(Map.of("feature", "flap-handle", "title", "Other")));
    Merge merge = Merge.of(base, null, moved);
    assertThat(merge.result()).isNull();
    assertThat(merge.clashes()).hasSize(1);
    assertThat(Merge.of(base, null, moved, c -> Side.THEIRS).result()).isEqualTo(moved);
    assertThat(Merge.of(base, moved, null).clashes()).hasSize(1);
  }

  @Test
  void twoNewEntriesUnderOneKeyMergeCellByCell() {
    Sheet blank = Sheet.blank(EntryKind.CHANGE, "latch");
    Sheet mine = blank.plus("changes", Map.of("feature", "door-latch", "title", "Rotary latch"));
    Sheet theirs = blank.plus("changes", Map.of("feature", "door-latch", "title", "Latch"));
    Merge merge = Merge.of(null, mine, theirs);
    assertThat(merge.clashes()).extracting(Clash::column).containsExactly("title");
    assertThat(merge.clashes().get(0).theirs()).isEqualTo("Latch");
  }

  private static Sheet sheet(Dice dice) {
    Sheet sheet =
        Sheet.blank(EntryKind.CHANGE, "latch")
            .plus("changes", Map.of("feature", "door-latch", "title", word(dice)));
    for (int i = dice.between(0, 3); i > 0; i--) {
      sheet = sheet.plus("cut-ins", cutIn("la-" + i, dice));
    }
    for (int i = dice.between(0, 2); i > 0; i--) {
      sheet = sheet.plus("change-offerings", Map.of("value", "v" + i, "fit", "standard"));
    }
    return sheet;
  }

  private static Sheet edited(Sheet sheet, Dice dice) {
    Sheet moved = sheet;
    for (int i = dice.between(1, 3); i > 0; i--) {
      moved = editedOnce(moved, dice);
    }
    return moved;
  }

  private static Sheet editedOnce(Sheet sheet, Dice dice) {
    List<Map<String, String>> rows = new ArrayList<>(sheet.rows("cut-ins"));
    switch (dice.between(0, 3)) {
      case 0 -> {
        Map<String, String> own = new LinkedHashMap<>(sheet.rows("changes").get(0));
        own.put(dice.between(0, 1) == 0 ? "title" : "detail", word(dice));
        return sheet.with("changes", List.of(own));
      }
      case 1 -> {
        String variant = "la-" + dice.between(1, 5);
        rows.removeIf(r -> variant.equals(r.get("variant")));
        rows.add(cutIn(variant, dice));
      }
      case 2 -> {
        if (!rows.isEmpty()) {
          rows.remove(dice.between(0, rows.size() - 1));
        }
      }
      default -> {
        if (!rows.isEmpty()) {
          int at = dice.between(0, rows.size() - 1);
          Map<String, String> row = new LinkedHashMap<>(rows.get(at));
          row.put("settled_year", "19" + dice.between(70, 72));
          rows.set(at, row);
        }
      }
    }
    return sheet.with("cut-ins", rows);
  }

  private static Map<String, String> cutIn(String variant, Dice dice) {
    return Map.of("variant", variant, "first_year", "19" + dice.between(60, 62));
  }

  private static String word(Dice dice) {
    return "word " + dice.between(0, 4);
  }

  /** Every cell by the name that a clash about it would have. */
  private static Map<String, String> flat(@Nullable Sheet sheet) {
    Map<String, String> cells = new LinkedHashMap<>();
    if (sheet == null) {
      return cells;
    }
    for (TableSchema table : EntryTables.of(sheet.kind())) {
      for (Map<String, String> row : sheet.rows(table.name())) {
        String key = EntryTables.keyOf(table, sheet.kind(), row);
        for (Field field : EntryTables.typed(table, sheet.kind())) {
          String cell = row.get(field.name());
          if (cell != null) {
            cells.put(table.name() + "|" + key + "|" + field.name(), cell);
          }
        }
      }
    }
    return cells;
  }
}
