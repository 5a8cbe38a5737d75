package club.yearline.exchange;

import club.yearline.tables.Complaint;
import club.yearline.tables.Field;
import club.yearline.tables.Row;
import club.yearline.tables.TableSchema;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Iterator;
import java.util.Map;
import java.util.function.Consumer;
import java.util.zip.ZipException;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/** Reads one table row by row, and says what is wrong with its header and cells. */
final class CsvTable {

  private static final CSVFormat FORMAT = CSVFormat.RFC4180;
  private static final char BYTE_ORDER_MARK = '\ufeff';

  private final TableSchema schema;
  private final Problems problems;

  CsvTable(TableSchema schema, Problems problems) {
    this.schema = schema;
    this.problems = problems;
  }

  /** Hands over every row that is as wide as the header. */
  void read(PackageFiles files, Budget budget, Consumer<Row> rows) throws IOException {
    int line = 1;
    // A decoder made anew reports malformed bytes; the charset itself would replace them.
    try (InputStream in = budget.watch(files.open(schema.path()));
        Reader text =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8.newDecoder()));
        CSVParser parser = FORMAT.parse(withoutMark(text))) {
      Iterator<CSVRecord> records = parser.iterator();
      Map<String, Integer> columns = Map.of();
      int width = -1;
      while (records.hasNext()) {
        CSVRecord record = records.next();
        if (width < 0) {
          columns = columns(record);
          width = record.size();
        } else if (!isBlank(record)) {
          check(record, columns, width, line, rows);
        }
        line = (int) parser.getCurrentLineNumber() + 1;
      }
      if (width < 0) {
        problem(1, "no-header", String.join(",", schema.header()));
      }
    } catch (UncheckedIOException e) {
      unreadable(files, line, e.getCause());
    } catch (CharacterCodingException | ZipException e) {
      unreadable(files, line, e);
    }
  }

  private static Reader withoutMark(Reader text) throws IOException {
    text.mark(1);
    if (text.read() != BYTE_ORDER_MARK) {
      text.reset();
    }
    return text;
  }

  private static boolean isBlank(CSVRecord record) {
    return record.size() == 1 && record.get(0).isEmpty();
  }

  /** Where the header has each column of the schema; complains about all else. */
  private Map<String, Integer> columns(CSVRecord header) {
    Map<String, Integer> columns = new HashMap<>();
    for (int i = 0; i < header.size(); i++) {
      String name = header.get(i);
      if (!schema.header().contains(name)) {
        cell(1, name, name, Complaint.of("unknown-column", String.join(", ", schema.header())));
      } else if (columns.putIfAbsent(name, i) != null) {
        cell(1, name, name, Complaint.of("repeated-column"));
      }
    }
    for (Field field : schema.fields()) {
      if (field.required() && !columns.containsKey(field.name())) {
        cell(1, field.name(), null, Complaint.of("missing-column", field.description()));
      }
    }
    return columns;
  }

  private void check(
      CSVRecord record, Map<String, Integer> columns, int width, int line, Consumer<Row> rows) {
    if (record.size() != width) {
      problem(line, "row-width", width, record.size());
      return;
    }
    Row row = new Row(columns, record::get, line);
    for (Field field : schema.fields()) {
      // A missing column has had its complaint; it needs none in every row.
      if (columns.containsKey(field.name())) {
        String cell = row.text(field.name());
        field.check(cell).ifPresent(c -> cell(line, field.name(), cell, c));
      }
    }
    rows.accept(row);
  }

  private void unreadable(PackageFiles files, int line, @Nullable Throwable e) throws IOException {
    if (e instanceof CharacterCodingException) {
      try (InputStream in = files.open(schema.path())) {
        problem(Utf8.firstBadLine(in), "not-utf-8");
      }
    } else if (e instanceof CSVException) {
      problem(line, "broken-quotes");
    } else {
      problem(line, "unreadable-file", String.valueOf(e));
    }
  }

  private void cell(int line, String column, @Nullable String value, Complaint c) {
    problems.add(PackageProblem.at(schema.path(), line, column, value, c));
  }

  private void problem(int line, String code, Object... arguments) {
    problems.add(PackageProblem.at(schema.path(), line, null, null, Complaint.of(code, arguments)));
  }
}
