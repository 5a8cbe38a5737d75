package club.yearline.exchange;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Writes a package as a zip. Equal packages make equal bytes: no clock goes in. */
final class ZipTarget implements PackageTarget {

  /** The first moment that a zip can name. */
  private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

  private final ZipOutputStream zip;

  ZipTarget(OutputStream out) {
    this.zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
  }

  @Override
  public OutputStream file(String name) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(NO_TIME);
    zip.putNextEntry(entry);
    return new FilterOutputStream(zip) {
      @Override
      public void write(byte[] bytes, int from, int length) throws IOException {
        zip.write(bytes, from, length);
      }

      @Override
      public void close() throws IOException {
        zip.closeEntry();
      }
    };
  }

  @Override
  public void close() throws IOException {
    zip.close();
  }
}
