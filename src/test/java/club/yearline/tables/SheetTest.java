package club.yearline.tables;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.effectivity.Entry;
import club.yearline.effectivity.EntryKind;
import club.yearline.testing.Seeds;
import club.yearline.testing.SmallCatalogue;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Entries as sheets and back. */
class SheetTest {

  @Test
  void everyEntryIsReadBackFromItsSheetAsItWas() {
    Seeds.check(
        200,
        (records, dice) -> {
          for (Entry entry : records.entries()) {
            SheetReader.Reading reading = SheetReader.read(Sheet.of(entry));
            assertThat(reading.faults()).isEmpty();
            assertThat(reading.made()).contains(entry);
          }
        });
  }

  @Test
  void equalEntriesHaveEqualSheetsAndOthersDoNot() {
    List<Entry> entries = SmallCatalogue.records().entries();
    for (Entry entry : entries) {
      assertThat(entries.stream().filter(e -> Sheet.of(e).equals(Sheet.of(entry))))
          .containsExactly(entry);
    }
  }

  @Test
  void aBlankSheetSaysWhichCellsAreNeeded() {
    List<SheetReader.Fault> faults =
        SheetReader.read(Sheet.blank(EntryKind.CHANGE, "new-latch")).faults();
    assertThat(faults).extracting(SheetReader.Fault::column).containsExactly("feature", "title");
    assertThat(faults).allMatch(f -> f.complaint().code().equals("required"));
  }

  @Test
  void aKeyThatIsNoKeyIsAFaultOfTheEntryItself() {
    SheetReader.Reading reading = SheetReader.read(Sheet.blank(EntryKind.SOURCE, "No key!"));
    assertThat(reading.faults())
        .anyMatch(f -> f.column().equals("key") && f.complaint().code().equals("bad-pattern"));
  }

  @Test
  void twoRowsThatNothingTellsApartAreAFaultOfTheSecond() {
    Sheet sheet =
        Sheet.blank(EntryKind.VARIANT, "la-9")
            .with("variants", List.of(Map.of("family", "turnstone", "designation", "LA-9")))
            .with(
                "production-runs",
                List.of(
                    Map.of("first_year", "1960", "last_year", "1961"),
                    Map.of("first_year", "01960")));
    assertThat(SheetReader.read(sheet).faults())
        .containsExactly(
            new SheetReader.Fault(
                "production-runs", 1, "first_year", Complaint.of("repeated-row")));
  }

  @Test
  void cellsOfOtherTablesAndColumnsAreNotTaken() {
    Sheet sheet =
        Sheet.of(
            EntryKind.SERIES,
            "lt",
            Map.of(
                "series", List.of(Map.of("family", "turnstone", "key", "xx", "evil", "1")),
                "people", List.of(Map.of("role", "keeper"))));
    assertThat(sheet.tables()).containsOnlyKeys("series", "citations");
    assertThat(sheet.rows("series")).containsExactly(Map.of("family", "turnstone"));
  }
}
