package club.yearline.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;

/** A package as a folder. */
final class FolderFiles implements PackageFiles {

  private static final int DEPTH = 3;

  private final Path folder;
  private final SortedSet<String> names;

  private FolderFiles(Path folder, SortedSet<String> names) {
    this.folder = folder;
    this.names = Collections.unmodifiableSortedSet(names);
  }

  static FolderFiles in(Path folder) throws IOException {
    SortedSet<String> names = new TreeSet<>();
    try (Stream<Path> walk = Files.walk(folder, DEPTH)) {
      for (Path file : (Iterable<Path>) walk.filter(Files::isRegularFile)::iterator) {
        names.add(nameInside(folder, file));
      }
    }
    return new FolderFiles(folder, names);
  }

  /** The name of a file; refuses a link that leads out of the folder. */
  private static String nameInside(Path folder, Path file) throws IOException {
    String name = folder.relativize(file).toString().replace('\\', '/');
    if (!file.toRealPath().startsWith(folder.toRealPath())) {
      throw new RefusedPackage(PackageProblem.of(folder.toString(), "climbing-name", name));
    }
    return name;
  }

  @Override
  public String packageName() {
    return folder.toString();
  }

  @Override
  public SortedSet<String> names() {
    return names;
  }

  @Override
  public InputStream open(String name) throws IOException {
    return Files.newInputStream(folder.resolve(name));
  }

  @Override
  public void close() {
    // Nothing is held open.
  }
}
