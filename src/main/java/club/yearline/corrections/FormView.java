package club.yearline.corrections;

import club.yearline.web.Choice;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The form for one entry.
 *
 * @param own the fields of the entry itself
 * @param parts the tables of rows that it holds
 * @param lists what is known for fields that name other entries, by id of the list
 */
record FormView(List<FormField> own, List<Part> parts, Map<String, List<Choice>> lists) {

  /**
   * Rows that the entry holds.
   *
   * @param table resource name of the table
   * @param title what they are
   * @param rows the rows, one empty one at the end
   */
  record Part(String table, String title, List<Row> rows) {}

  /**
   * One row.
   *
   * @param legend what it is and its number
   * @param says what it says, in short; empty for an empty row
   * @param open whether it is shown unfolded
   * @param fields its fields
   * @param remove name of the field that takes it out; null where it is empty anyway
   */
  record Row(
      String legend, String says, boolean open, List<FormField> fields, @Nullable String remove) {}

  /**
   * One field.
   *
   * @param name its name
   * @param control what takes the text: text, number, area, select, check, hidden
   * @param label what it is
   * @param hint what to type; null where that needs no words
   * @param value what it holds
   * @param choices of a select
   * @param list id of the list of what is known; null where any text goes
   * @param fault what is wrong with it; null where nothing is
   */
  record FormField(
      String name,
      String control,
      String label,
      @Nullable String hint,
      String value,
      List<Choice> choices,
      @Nullable String list,
      @Nullable String fault) {}
}
