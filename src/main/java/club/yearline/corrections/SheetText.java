package club.yearline.corrections;

import club.yearline.effectivity.EntryKind;
import club.yearline.tables.Sheet;
import java.util.List;
import java.util.Map;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** Sheets as the text in which proposals keep them. */
final class SheetText {

  private static final JsonMapper JSON = JsonMapper.builder().build();

  private static final TypeReference<Map<String, List<Map<String, String>>>> TABLES =
      new TypeReference<>() {};

  private SheetText() {}

  static String write(Sheet sheet) {
    return JSON.writeValueAsString(sheet.tables());
  }

  static Sheet read(EntryKind kind, String key, String text) {
    return Sheet.of(kind, key, JSON.readValue(text, TABLES));
  }
}
