package club.yearline.web;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;

/** Where a form was sent from, so that somebody refused finds the way back to it. */
final class SentFrom {

  private SentFrom() {}

  /** The path and query of the page with the form; null unless it is a page of ours. */
  static @Nullable String of(HttpServletRequest request) {
    String page = request.getHeader(HttpHeaders.REFERER);
    if (page == null || request.getMethod().equals("GET") || request.getMethod().equals("HEAD")) {
      return null;
    }
    try {
      URI from = URI.create(page);
      boolean ours =
          request.getServerName().equalsIgnoreCase(from.getHost())
              && from.getRawPath() != null
              && from.getRawPath().matches("/(?!/).*");
      String query = from.getRawQuery() == null ? "" : "?" + from.getRawQuery();
      return ours ? from.getRawPath() + query : null;
    } catch (IllegalArgumentException e) {
      return null; // Whatever sent this, it was no page of ours.
    }
  }
}
