package club.yearline.web;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.web.servlet.resource.ResourceUrlProvider;

/**
 * Addresses of static files with a hash of their content in them, so that browsers may keep them
 * for a year. Each is looked up once: the filter that rewrites every link of every page would look
 * up each catalogue link in vain.
 */
final class Assets {

  private final ObjectProvider<ResourceUrlProvider> urls;
  private final Map<String, String> known = new ConcurrentHashMap<>();

  Assets(ObjectProvider<ResourceUrlProvider> urls) {
    this.urls = urls;
  }

  /**
   * The address of a static file within the application.
   *
   * @throws IllegalArgumentException if there is no such file
   */
  String address(String path) {
    return known.computeIfAbsent(path, this::lookUp);
  }

  private String lookUp(String path) {
    String address = urls.getObject().getForLookupPath(path);
    if (address == null) {
      throw new IllegalArgumentException("No static file " + path);
    }
    return address;
  }
}
