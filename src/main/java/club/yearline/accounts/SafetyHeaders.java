package club.yearline.accounts;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.security.web.header.HeaderWriter;

/**
 * What every answer tells the browser. Caching is left to the controllers: an answer at a revision
 * may be kept for ever.
 */
final class SafetyHeaders implements HeaderWriter {

  private static final String CONTENT_POLICY =
      "default-src 'self'; img-src 'self' data:; object-src 'none'; base-uri 'none';"
          + " frame-ancestors 'none'; form-action 'self'";

  private static final String PERMISSIONS =
      "camera=(), geolocation=(), microphone=(), payment=(), usb=()";

  @Override
  public void writeHeaders(HttpServletRequest request, HttpServletResponse response) {
    // Pictures come with a policy of their own, under which nothing at all may load or run.
    if (!response.containsHeader("Content-Security-Policy")) {
      response.setHeader("Content-Security-Policy", CONTENT_POLICY);
    }
    response.setHeader("X-Content-Type-Options", "nosniff");
    response.setHeader("Referrer-Policy", "same-origin");
    response.setHeader("Permissions-Policy", PERMISSIONS);
    response.setHeader("X-Frame-Options", "DENY");
    response.setHeader("Cross-Origin-Opener-Policy", "same-origin");
    if (request.isSecure()) {
      response.setHeader("Strict-Transport-Security", "max-age=31536000");
    }
  }
}
