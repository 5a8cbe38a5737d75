package club.yearline.accounts;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.Objects;
import java.util.Optional;
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
    return origin == null || isHost(origin, request) || isForwarded(origin, request);
  }

  private static boolean isHost(String origin, HttpServletRequest request) {
    return parsed(origin)
        .filter(uri -> Objects.equals(uri.getHost(), request.getServerName()))
        .filter(uri -> port(uri.getScheme(), uri.getPort()) == request.getServerPort())
        .isPresent();
  }

  /** A proxy that renames the host says so in a header that no page can make a browser send. */
  private static boolean isForwarded(String origin, HttpServletRequest request) {
    String host = request.getHeader("X-Forwarded-Host");
    return host != null
        && parsed(origin)
            .filter(uri -> Objects.equals(uri.getRawAuthority(), host.strip()))
            .isPresent();
  }

  private static Optional<URI> parsed(String origin) {
    try {
      return Optional.of(new URI(origin));
    } catch (URISyntaxException e) {
      // Also what a browser sends for a page without an origin: the word null has no host.
      return Optional.empty();
    }
  }

  private static int port(@Nullable String scheme, int port) {
    if (port >= 0) {
      return port;
    }
    return "https".equals(scheme) ? 443 : 80;
  }
}
