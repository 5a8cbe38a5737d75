package club.yearline.exchange;

import java.io.BufferedWriter;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Writes rows in the one form that the format has: commas, LF, quotes only where RFC 4180 needs
 * them. The CSV library's minimal quoting also quotes cells that merely begin or end with certain
 * characters.
 */
final class CsvWriter implements Closeable {

  private final Writer out;

  CsvWriter(OutputStream out) {
    this.out = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
  }

  void row(List<String> cells) throws IOException {
    row(cells.toArray(String[]::new));
  }

  void row(String[] cells) throws IOException {
    for (int i = 0; i < cells.length; i++) {
      if (i > 0) {
        out.write(',');
      }
      cell(cells[i]);
    }
    out.write('\n');
  }

  private void cell(String text) throws IOException {
    if (needsQuotes(text)) {
      out.write('"');
      out.write(text.replace("\"", "\"\""));
      out.write('"');
    } else {
      out.write(text);
    }
  }

  private static boolean needsQuotes(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == ',' || c == '"' || c == '\n' || c == '\r') {
        return true;
      }
    }
    return false;
  }

  void flush() throws IOException {
    out.flush();
  }

  @Override
  public void close() throws IOException {
    out.close();
  }
}
