package club.yearline.exchange;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes a package as a folder; several of its files may be written at a time. */
final class FolderTarget implements PackageTarget {

  private final Path folder;

  FolderTarget(Path folder) {
    this.folder = folder.normalize();
  }

  @Override
  public OutputStream file(String name) throws IOException {
    Path file = folder.resolve(name).normalize();
    if (!file.startsWith(folder)) {
      throw new IllegalArgumentException("The name leads out of the package: " + name);
    }
    Path parent = file.getParent();
    if (parent != null) {
      Files.createDirectories(parent);
    }
    return Files.newOutputStream(file);
  }

  @Override
  public void close() {
    // Nothing is held open.
  }
}
