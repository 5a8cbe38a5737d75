package club.yearline.accounts;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.net.URISyntaxException;
import org.jspecify.annotations.Nullable;

/** Where somebody is sent after signing in: an address of ours, whatever the request says. */
final class ReturnPath {

  /** Longer addresses are not of our making. */
  private static final int LONGEST = 2000;

  private ReturnPath() {}

  /** The path of a request within the application. */
  static String of(HttpServletRequest request) {
    return request.getRequestURI().substring(request.getContextPath().length());
  }

  /** The given address if it is one within the application; another otherwise. */
  static String orElse(@Nullable String wanted, String otherwise) {
    return wanted != null && isOurs(wanted) ? wanted : otherwise;
  }

  /** Browsers read a backslash as a slash, and leave control characters out. */
  private static boolean isOurs(String path) {
    if (path.length() > LONGEST
        || !path.startsWith("/")
        || path.startsWith("//")
        || path.startsWith("/sign-in")
        || path.startsWith("/sign-out")
        || path.chars().anyMatch(c -> c <= ' ' || c == '\\' || c == 0x7f)) {
      return false;
    }
    try {
      URI uri = new URI(path);
      return uri.getScheme() == null && uri.getRawAuthority() == null;
    } catch (URISyntaxException e) {
      return false;
    }
  }
}
