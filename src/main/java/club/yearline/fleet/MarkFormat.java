package club.yearline.fleet;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * What the marks of a state look like. Rows of {@code registration/marks.csv}, which says where
 * they come from.
 *
 * @param mark the nationality mark
 * @param state name of the state
 * @param dash whether a dash follows the nationality mark
 * @param rest what may follow
 * @param words the same for people
 */
record MarkFormat(String mark, String state, boolean dash, Pattern rest, String words) {

  /** All that are known. */
  static final List<MarkFormat> ALL = read();

  private static List<MarkFormat> read() {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    List<MarkFormat> formats = new ArrayList<>();
    try (InputStream in =
            Objects.requireNonNull(
                MarkFormat.class.getResourceAsStream("/registration/marks.csv"));
        InputStreamReader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      for (CSVRecord row : format.parse(reader)) {
        formats.add(
            new MarkFormat(
                row.get("mark"),
                row.get("state"),
                row.get("dash").equals("yes"),
                Pattern.compile(row.get("rest")),
                row.get("words")));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return List.copyOf(formats);
  }

  /** Whether capitals and digits without a dash are a mark of this state. */
  boolean fits(String bare) {
    return begins(bare) && rest.matcher(bare.substring(mark.length())).matches();
  }

  boolean begins(String bare) {
    return bare.startsWith(mark);
  }

  /** A mark as this state writes it. */
  String write(String bare) {
    return dash ? mark + "-" + bare.substring(mark.length()) : bare;
  }
}
