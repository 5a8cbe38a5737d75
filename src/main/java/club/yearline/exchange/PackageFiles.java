package club.yearline.exchange;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.regex.Pattern;

/** The files of a data package, in a folder, a zip, or the application itself. */
interface PackageFiles extends Closeable {

  /** Where pictures lie. */
  String PICTURES = "pictures/";

  /** Names that leave the package, or that a system reads as doing so. */
  Pattern CLIMBING = Pattern.compile("(^|.*[/\\\\])\\.\\.([/\\\\].*|$)|^[/\\\\].*|^[A-Za-z]:.*");

  /** What the package is called in reports. */
  String packageName();

  /** The names of all files, in order, with {@code /} between folders. */
  Set<String> names();

  /** Opens a file that {@link #names} lists. */
  InputStream open(String name) throws IOException;

  /**
   * The files of the folder or zip at a path.
   *
   * @throws RefusedPackage if it is neither, or not safe to read
   */
  static PackageFiles at(Path path) throws IOException {
    if (Files.isDirectory(path)) {
      return FolderFiles.in(path);
    }
    if (!Files.exists(path)) {
      throw new RefusedPackage(PackageProblem.of(path.toString(), "no-such-package"));
    }
    return ZipFiles.in(path);
  }
}
