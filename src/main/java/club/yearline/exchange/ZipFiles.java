package club.yearline.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Enumeration;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/** A package as a zip. Nothing of it is unpacked to disk. */
final class ZipFiles implements PackageFiles {

  private final String packageName;
  private final ZipFile zip;
  private final NavigableMap<String, ZipEntry> entries;

  private ZipFiles(String packageName, ZipFile zip, NavigableMap<String, ZipEntry> entries) {
    this.packageName = packageName;
    this.zip = zip;
    this.entries = entries;
  }

  static ZipFiles in(Path path) throws IOException {
    return in(path, path.toString());
  }

  /** The zip at a path, called by another name in reports. */
  static ZipFiles in(Path path, String name) throws IOException {
    if (Files.size(path) > Budget.MOST) {
      throw new RefusedPackage(PackageProblem.of(name, "too-large", Budget.MOST / (1024 * 1024)));
    }
    ZipFile zip = open(path, name);
    try {
      return new ZipFiles(name, zip, entries(name, zip));
    } catch (RefusedPackage e) {
      zip.close();
      throw e;
    }
  }

  private static ZipFile open(Path path, String name) throws IOException {
    try {
      return new ZipFile(path.toFile());
    } catch (ZipException e) {
      throw new RefusedPackage(
          PackageProblem.of(name, "not-a-zip", String.valueOf(e.getMessage())));
    }
  }

  private static NavigableMap<String, ZipEntry> entries(String packageName, ZipFile zip) {
    NavigableMap<String, ZipEntry> entries = new TreeMap<>();
    for (Enumeration<? extends ZipEntry> all = zip.entries(); all.hasMoreElements(); ) {
      ZipEntry entry = all.nextElement();
      if (CLIMBING.matcher(entry.getName()).matches()) {
        throw new RefusedPackage(PackageProblem.of(packageName, "climbing-name", entry.getName()));
      }
      if (!entry.isDirectory() && entries.put(entry.getName(), entry) != null) {
        throw new RefusedPackage(PackageProblem.of(packageName, "repeated-name", entry.getName()));
      }
    }
    return entries;
  }

  @Override
  public String packageName() {
    return packageName;
  }

  @Override
  public Set<String> names() {
    return Collections.unmodifiableSet(entries.keySet());
  }

  @Override
  public InputStream open(String name) throws IOException {
    ZipEntry entry = entries.get(name);
    if (entry == null) {
      throw new IllegalArgumentException("The package has no file " + name);
    }
    return zip.getInputStream(entry);
  }

  @Override
  public void close() throws IOException {
    zip.close();
  }
}
