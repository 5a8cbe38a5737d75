package club.yearline.upkeep;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.SQLException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.sql.DataSource;

/**
 * Writes all that is stored into one zip: a file of lines for each table, and what they hold in
 * short, so that damage is found before anything is restored. Of one moment, while people work.
 */
public final class Backup {

  private final DataSource source;

  /** A backup of a database. */
  public Backup(DataSource source) {
    this.source = source;
  }

  /**
   * Writes a file, whole or not at all.
   *
   * @return how many rows it holds
   * @throws UnusableBackup if there is a file already
   */
  public long write(Path path) throws IOException, SQLException {
    if (Files.exists(path)) {
      throw new UnusableBackup("path-taken", path);
    }
    Path part = path.resolveSibling(path.getFileName() + ".part");
    try {
      long rows;
      try (OutputStream out = Files.newOutputStream(part)) {
        rows = write(out);
      }
      Files.move(part, path, StandardCopyOption.ATOMIC_MOVE);
      return rows;
    } finally {
      Files.deleteIfExists(part);
    }
  }

  /**
   * Writes to a stream, and leaves it open.
   *
   * @return how many rows were written
   */
  public long write(OutputStream out) throws IOException, SQLException {
    ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
    Contents contents;
    try (Snapshot snapshot = new Snapshot(source)) {
      contents = write(snapshot, zip);
    }
    zip.putNextEntry(new ZipEntry(Contents.NAME));
    zip.write(Lines.JSON.writerWithDefaultPrettyPrinter().writeValueAsBytes(contents));
    zip.closeEntry();
    zip.finish();
    return contents.rows();
  }

  private static Contents write(Snapshot snapshot, ZipOutputStream zip)
      throws IOException, SQLException {
    String made = Instant.now().truncatedTo(ChronoUnit.SECONDS).toString();
    List<Table> tables = snapshot.tables();
    Map<String, Counted> counted = new LinkedHashMap<>();
    for (Table table : tables) {
      zip.putNextEntry(new ZipEntry(Contents.nameOf(table.name())));
      counted.put(table.name(), write(snapshot, table, zip));
      zip.closeEntry();
    }
    return new Contents(
        Contents.FORMAT,
        snapshot.schema.version(),
        made,
        counted,
        snapshot.schema.sequences(),
        snapshot.schema.counters(tables));
  }

  private static Counted write(Snapshot snapshot, Table table, ZipOutputStream zip)
      throws IOException, SQLException {
    Counted.Counting counting = new Counted.Counting();
    Writer writer = new BufferedWriter(new OutputStreamWriter(zip, StandardCharsets.UTF_8));
    snapshot.lines(
        table,
        line -> {
          counting.add(line);
          try {
            writer.write(line);
            writer.write('\n');
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
        });
    writer.flush();
    return counting.counted();
  }
}
