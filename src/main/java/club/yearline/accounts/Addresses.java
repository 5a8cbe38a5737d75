package club.yearline.accounts;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/**
 * Full addresses of links. What is shown to somebody who is here takes the address of the request;
 * what is mailed takes the configured one only, because the sender of a request names any host.
 */
@Component
public class Addresses {

  private final String configured;

  Addresses(@Value("${yearline.address:}") String configured) {
    this.configured = configured.strip().replaceAll("/+$", "");
  }

  /** Whether the public address of this installation is known. */
  boolean isKnown() {
    return !configured.isEmpty();
  }

  /** The full address of a path, for a mail or the log. */
  String publicly(String path) {
    return configured + path;
  }

  /** The full address of a path, for somebody who looks at a page now. */
  public String here(HttpServletRequest request, String path) {
    return isKnown()
        ? publicly(path)
        : ServletUriComponentsBuilder.fromContextPath(request).build().toUriString() + path;
  }
}
