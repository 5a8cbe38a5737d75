package club.yearline.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;

/** A package that is part of the application. */
final class ResourceFiles implements PackageFiles {

  private final String folder;
  private final NavigableMap<String, Resource> files;

  private ResourceFiles(String folder, NavigableMap<String, Resource> files) {
    this.folder = folder;
    this.files = files;
  }

  /** The package in a folder of the class path, such as {@code seed-data/demo}. */
  static ResourceFiles in(String folder) throws IOException {
    NavigableMap<String, Resource> files = new TreeMap<>();
    String pattern = "classpath:/" + folder + "/**";
    for (Resource resource : new PathMatchingResourcePatternResolver().getResources(pattern)) {
      String url = URLDecoder.decode(resource.getURL().toString(), StandardCharsets.UTF_8);
      String name = url.substring(url.lastIndexOf(folder + "/") + folder.length() + 1);
      if (resource.isReadable() && !name.isEmpty() && !name.endsWith("/")) {
        files.put(name, resource);
      }
    }
    return new ResourceFiles(folder, files);
  }

  @Override
  public String packageName() {
    return folder;
  }

  @Override
  public Set<String> names() {
    return Collections.unmodifiableSet(files.keySet());
  }

  @Override
  public InputStream open(String name) throws IOException {
    Resource file = files.get(name);
    if (file == null) {
      throw new IllegalArgumentException("The package has no file " + name);
    }
    return file.getInputStream();
  }

  @Override
  public void close() {
    // Nothing is held open.
  }
}
