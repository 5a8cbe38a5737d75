package club.yearline.upkeep;

import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;

/** A backup that was found whole: every row that was written is there, and as it was written. */
public final class BackupFile implements Closeable {

  private final ZipFile zip;
  private final Contents contents;

  private BackupFile(ZipFile zip, Contents contents) {
    this.zip = zip;
    this.contents = contents;
  }

  /**
   * Opens a backup, and reads it to its end to see that it is whole.
   *
   * @throws UnusableBackup if it is not
   */
  public static BackupFile open(Path path) throws IOException {
    ZipFile zip = zip(path);
    try {
      BackupFile file = new BackupFile(zip, contents(zip, path));
      file.check(path);
      return file;
    } catch (IOException | RuntimeException e) {
      zip.close();
      throw e;
    }
  }

  private static ZipFile zip(Path path) throws IOException {
    try {
      return new ZipFile(path.toFile());
    } catch (ZipException e) {
      throw new UnusableBackup("not-a-backup", path);
    }
  }

  private static Contents contents(ZipFile zip, Path path) throws IOException {
    ZipEntry entry = zip.getEntry(Contents.NAME);
    if (entry == null) {
      throw new UnusableBackup("not-a-backup", path);
    }
    try (InputStream in = zip.getInputStream(entry)) {
      Contents contents = Lines.JSON.readValue(in, Contents.class);
      if (contents.format() != Contents.FORMAT) {
        throw new UnusableBackup("other-format", contents.format(), Contents.FORMAT);
      }
      return contents;
    } catch (JacksonException | ZipException e) {
      throw new UnusableBackup("damaged", path, Contents.NAME);
    }
  }

  private void check(Path path) throws IOException {
    for (Map.Entry<String, Counted> table : contents.tables().entrySet()) {
      if (!table.getValue().equals(count(table.getKey()))) {
        throw new UnusableBackup("damaged", path, Contents.nameOf(table.getKey()));
      }
    }
  }

  private @Nullable Counted count(String table) throws IOException {
    Counted.Counting counting = new Counted.Counting();
    try (BufferedReader lines = lines(table)) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        counting.add(line);
      }
      return counting.counted();
    } catch (UnusableBackup | java.io.EOFException | ZipException e) {
      return null; // Not what was written, whatever it is.
    }
  }

  /** What it says of itself. */
  Contents contents() {
    return contents;
  }

  /** How many rows it holds. */
  public long rows() {
    return contents.rows();
  }

  /** When it was made, in UTC. */
  public String made() {
    return contents.made();
  }

  /** The rows of a table. */
  BufferedReader lines(String table) throws IOException {
    ZipEntry entry = zip.getEntry(Contents.nameOf(table));
    if (entry == null) {
      throw new UnusableBackup("damaged", zip.getName(), Contents.nameOf(table));
    }
    return new BufferedReader(
        new InputStreamReader(zip.getInputStream(entry), StandardCharsets.UTF_8));
  }

  @Override
  public void close() throws IOException {
    zip.close();
  }
}
