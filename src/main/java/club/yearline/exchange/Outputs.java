package club.yearline.exchange;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import java.util.stream.Stream;
import org.springframework.util.FileSystemUtils;

/** Writes packages to paths: whole or not at all, and never over something else. */
final class Outputs {

  /** What writes a package. */
  interface Writing {
    void to(PackageTarget target) throws IOException;
  }

  private Outputs() {}

  /** Whether a path stands for a zip, by its name. */
  static boolean isZip(Path path) {
    return path.toString().toLowerCase(Locale.ROOT).endsWith(".zip");
  }

  /**
   * Writes a zip where the name ends so, else a folder.
   *
   * @throws RefusedPackage if something is there already
   */
  static void write(Path path, Writing writing) throws IOException {
    if (isTaken(path)) {
      throw new RefusedPackage(PackageProblem.of(path.toString(), "path-taken"));
    }
    Path part = path.resolveSibling(path.getFileName() + ".part");
    FileSystemUtils.deleteRecursively(part);
    try {
      try (PackageTarget target = target(path, part)) {
        writing.to(target);
      }
      // An empty folder may be in the way; one that is not empty was refused above.
      Files.move(part, path, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      FileSystemUtils.deleteRecursively(part);
    }
  }

  private static PackageTarget target(Path path, Path part) throws IOException {
    Path parent = path.toAbsolutePath().getParent();
    if (parent != null) {
      Files.createDirectories(parent);
    }
    return isZip(path) ? new ZipTarget(Files.newOutputStream(part)) : folder(part);
  }

  private static PackageTarget folder(Path part) throws IOException {
    return new FolderTarget(Files.createDirectories(part));
  }

  private static boolean isTaken(Path path) throws IOException {
    if (!Files.isDirectory(path)) {
      return Files.exists(path);
    }
    try (Stream<Path> inside = Files.list(path)) {
      return isZip(path) || inside.findAny().isPresent();
    }
  }

  /** Copies every file of a folder into a target. */
  static void copy(FolderFiles from, PackageTarget target) throws IOException {
    for (String name : from.names()) {
      try (OutputStream out = target.file(name);
          var in = from.open(name)) {
        in.transferTo(out);
      }
    }
  }
}
