package club.yearline.accounts;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Where a form was sent from, as the browser says. A second line beside the token in each form: the
 * browser of a person who was lured elsewhere says so.
 */
final class Origins {

  private Origins() {}

  /** Whether a form comes from a page of ours; so it does where the browser says nothing. */
  static boolean isOurs(HttpServletRequest request) {
    String site = request.getHeader("Sec-Fetch-Site");
    if (site != null) {
      return site.equals("same-origin") || site.equals("none");
    }
    String origin = request.getHeader("Origin");
    return origin == null || isHost(origin, request);
  }

  private static boolean isHost(String origin, HttpServletRequest request) {
    try {
      URI uri = new URI(origin);
      return Objects.equals(uri.getHost(), request.getServerName())
          && port(uri.getScheme(), uri.getPort()) == request.getServerPort();
    } catch (URISyntaxException e) {
      return false;
    }
  }

  private static int port(@Nullable String scheme, int port) {
    if (port >= 0) {
      return port;
    }
    return "https".equals(scheme) ? 443 : 80;
  }
}
