package club.yearline.news;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/**
 * Where the site is reached from outside: as the keeper has set it, or else as the request says it
 * was asked for.
 */
@Component
class PublicAddress {

  private final String configured;

  PublicAddress(@Value("${yearline.address:}") String configured) {
    String text = configured.strip();
    this.configured = text.endsWith("/") ? text.substring(0, text.length() - 1) : text;
    if (!text.isEmpty() && !text.matches("https?://[^\\s/?#]+(/[^\\s?#]*)?")) {
      throw new IllegalArgumentException(
          "yearline.address must be the address of the site, such as https://catalogue.example,"
              + " and is: "
              + configured);
    }
  }

  /** The address without a slash at its end; paths of ours are put behind it. */
  String of(HttpServletRequest request) {
    return configured.isEmpty()
        ? ServletUriComponentsBuilder.fromContextPath(request).build().toUriString()
        : configured;
  }

  /** The full address of a path, where the address is set; the path alone otherwise. */
  String configured(String path) {
    return configured + path;
  }

  boolean isConfigured() {
    return !configured.isEmpty();
  }
}
