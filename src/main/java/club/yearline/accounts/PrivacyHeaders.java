package club.yearline.accounts;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.HttpHeaders;
import org.springframework.security.web.header.HeaderWriter;

/**
 * Keeps pages apart that the same address shows to different people: a page names who is signed in.
 * What no controller has given out for keeping is not kept anywhere.
 */
final class PrivacyHeaders implements HeaderWriter {

  @Override
  public void writeHeaders(HttpServletRequest request, HttpServletResponse response) {
    response.addHeader(HttpHeaders.VARY, HttpHeaders.COOKIE);
    String kept = response.getHeader(HttpHeaders.CACHE_CONTROL);
    if (kept == null) {
      response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
    } else if (SignedInActor.current() != null) {
      // A picture is the same for all, but in a closed club not for everybody.
      response.setHeader(HttpHeaders.CACHE_CONTROL, kept.replace("public", "private"));
    }
  }
}
