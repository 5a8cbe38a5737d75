package club.yearline.exchange;

import club.yearline.effectivity.Picture;
import club.yearline.effectivity.Records;
import club.yearline.tables.Rows;
import club.yearline.tables.Schemas;
import club.yearline.tables.TableSchema;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Map;
import java.util.TreeMap;

/**
 * Writes records as a package, canonically: files by name, columns in schema order, rows by primary
 * key. Equal catalogues make equal bytes.
 */
final class PackageWriter {

  /** Where the bytes of a picture come from. */
  interface Contents {
    byte[] of(Picture picture) throws IOException;
  }

  private interface Part {
    void writeTo(OutputStream out) throws IOException;
  }

  private PackageWriter() {}

  /** Writes the package; the target is not closed. */
  static void write(Records records, Contents contents, PackageTarget target) throws IOException {
    Map<String, Part> parts = new TreeMap<>();
    parts.put(
        Schemas.DESCRIPTOR,
        out -> out.write(Schemas.standard().descriptor().getBytes(StandardCharsets.UTF_8)));
    for (TableSchema table : Schemas.standard().tables()) {
      parts.put(table.path(), out -> writeTable(table, records, out));
    }
    for (Picture picture : records.pictures()) {
      parts.put(PackageFiles.PICTURES + picture.name(), out -> out.write(contents.of(picture)));
    }
    for (Map.Entry<String, Part> part : parts.entrySet()) {
      try (OutputStream out = target.file(part.getKey())) {
        part.getValue().writeTo(out);
      }
    }
  }

  private static void writeTable(TableSchema table, Records records, OutputStream out)
      throws IOException {
    CsvWriter csv = new CsvWriter(out);
    csv.row(table.header());
    for (String[] row : sorted(table, records)) {
      csv.row(row);
    }
    csv.flush();
  }

  /** The rows that records have in a table, in the order of its primary key. */
  static String[][] sorted(TableSchema table, Records records) {
    String[][] rows = Rows.of(table.name(), records).toArray(String[][]::new);
    Arrays.sort(rows, byKey(table.keyPositions()));
    return rows;
  }

  private static Comparator<String[]> byKey(int[] positions) {
    return (a, b) -> {
      for (int position : positions) {
        int order = a[position].compareTo(b[position]);
        if (order != 0) {
          return order;
        }
      }
      return 0;
    };
  }
}
