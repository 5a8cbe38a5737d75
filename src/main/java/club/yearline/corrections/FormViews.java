package club.yearline.corrections;

import club.yearline.corrections.FormView.FormField;
import club.yearline.corrections.FormView.Part;
import club.yearline.corrections.FormView.Row;
import club.yearline.effectivity.EntryKind;
import club.yearline.tables.EntryTables;
import club.yearline.tables.Field;
import club.yearline.tables.FieldType;
import club.yearline.tables.Sheet;
import club.yearline.tables.SheetReader.Fault;
import club.yearline.tables.TableSchema;
import club.yearline.web.Choice;
import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Makes forms of sheets. */
@Component
class FormViews {

  private static final Set<String> LONG = Set.of("summary", "detail", "description", "note");

  private final Phrases phrases;

  FormViews(Phrases phrases) {
    this.phrases = phrases;
  }

  /**
   * A form.
   *
   * @param sheet what it holds
   * @param faults what is wrong with it
   * @param known what is known for fields that name other entries
   * @param grown the table that gets further empty rows; null for none
   */
  FormView of(Sheet sheet, List<Fault> faults, Known known, @Nullable String grown) {
    return new Filling(sheet, faults, known, grown).make();
  }

  /** What a complaint says to somebody who fills in a form. */
  String fault(Fault fault) {
    List<String> arguments = fault.complaint().arguments();
    return phrases.of("corrections.fault." + fault.complaint().code(), arguments.toArray());
  }

  /** The label of a column. */
  String label(String table, String column) {
    return phrases.orElse(
        "corrections.field." + table + "." + column, phrases.of("corrections.column." + column));
  }

  /** The filling of one form. */
  private final class Filling {

    private static final int FURTHER = 3;
    private static final int SHOWN_UNFOLDED = 2;

    private final Sheet sheet;
    private final Known known;
    private final @Nullable String grown;
    private final Map<String, String> faultByName = new HashMap<>();

    Filling(Sheet sheet, List<Fault> faults, Known known, @Nullable String grown) {
      this.sheet = sheet;
      this.known = known;
      this.grown = grown;
      faults.forEach(
          f ->
              faultByName.merge(
                  SheetForm.name(f.table(), f.row(), f.column()),
                  fault(f),
                  (one, other) -> one + " " + other));
    }

    FormView make() {
      EntryKind kind = sheet.kind();
      List<TableSchema> tables = EntryTables.of(kind);
      List<Map<String, String>> own = sheet.rows(kind.resource());
      List<FormField> fields = fields(tables.get(0), 0, own.isEmpty() ? Map.of() : own.get(0));
      List<Part> parts = tables.stream().skip(1).map(this::part).toList();
      return new FormView(fields, parts, known.lists());
    }

    private Part part(TableSchema table) {
      List<Map<String, String>> filled = sheet.rows(table.name());
      List<Row> rows = new ArrayList<>();
      boolean few = filled.size() <= SHOWN_UNFOLDED;
      for (int i = 0; i < filled.size(); i++) {
        rows.add(row(table, i, filled.get(i), few));
      }
      int empty = table.name().equals(grown) ? FURTHER : 1;
      for (int i = 0; i < empty && rows.size() < SheetForm.MOST_ROWS; i++) {
        rows.add(row(table, rows.size(), Map.of(), true));
      }
      return new Part(table.name(), phrases.of("corrections.part." + table.name()), rows);
    }

    private Row row(TableSchema table, int at, Map<String, String> cells, boolean unfolded) {
      String one = phrases.of("corrections.row." + table.name());
      List<FormField> fields = fields(table, at, cells);
      return new Row(
          phrases.of("corrections.row", one, at + 1),
          says(table, cells),
          unfolded || fields.stream().anyMatch(f -> f.fault() != null),
          fields,
          cells.isEmpty() ? null : SheetForm.name(table.name(), at, "remove"));
    }

    private String says(TableSchema table, Map<String, String> cells) {
      return EntryTables.typed(table, sheet.kind()).stream()
          .filter(f -> cells.containsKey(f.name()) && !control(table, f).equals("hidden"))
          .map(f -> says(table, f, cells.getOrDefault(f.name(), "")))
          .collect(Collectors.joining(", "));
    }

    private String says(TableSchema table, Field field, String cell) {
      if (field.type() == FieldType.BOOLEAN) {
        return label(table.name(), field.name());
      }
      return field.words().isEmpty()
          ? cell
          : phrases.orElse("corrections.word." + field.name() + "." + cell, cell);
    }

    private List<FormField> fields(TableSchema table, int at, Map<String, String> cells) {
      return EntryTables.typed(table, sheet.kind()).stream()
          .map(field -> field(table, at, field, cells.getOrDefault(field.name(), "")))
          .toList();
    }

    private FormField field(TableSchema table, int at, Field field, String cell) {
      String name = SheetForm.name(table.name(), at, field.name());
      return new FormField(
          name,
          control(table, field),
          label(table.name(), field.name()),
          at == 0 ? hint(table, field) : null,
          cell,
          choices(field),
          known.listFor(field.name()),
          faultByName.get(name));
    }

    private @Nullable String hint(TableSchema table, Field field) {
      String key = "corrections.hint." + table.name() + "." + field.name();
      String hint = phrases.orElse(key, phrases.orElse("corrections.hint." + field.name(), ""));
      return hint.isEmpty() ? null : hint;
    }

    private String control(TableSchema table, Field field) {
      if (table.name().equals("citations") && field.name().equals("key")) {
        return "hidden";
      }
      if (!field.words().isEmpty()) {
        return "select";
      }
      if (field.type() == FieldType.BOOLEAN) {
        return "check";
      }
      if (LONG.contains(field.name()) && table.name().equals(sheet.kind().resource())) {
        return "area";
      }
      return field.type() == FieldType.INTEGER ? "number" : "text";
    }

    private List<Choice> choices(Field field) {
      if (field.words().isEmpty()) {
        return List.of();
      }
      List<Choice> choices = new ArrayList<>();
      if (!field.required()) {
        choices.add(new Choice("", phrases.of("corrections.choice.none")));
      }
      for (String word : field.words()) {
        choices.add(
            new Choice(
                word, phrases.orElse("corrections.word." + field.name() + "." + word, word)));
      }
      return choices;
    }
  }
}
