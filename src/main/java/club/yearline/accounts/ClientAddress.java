package club.yearline.accounts;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Where a request comes from, as the container says.
 *
 * @param text an address of the internet protocol, version 4 or 6
 */
record ClientAddress(String text) {

  private static final Pattern COLON = Pattern.compile(":");

  /** So many groups of a version 6 address belong to one customer, as a rule. */
  private static final int GROUPS_OF_NETWORK = 4;

  private static final int GROUPS_IN_LOG = 3;

  static ClientAddress of(HttpServletRequest request) {
    @Nullable String address = request.getRemoteAddr();
    return new ClientAddress(address == null ? "unknown" : address);
  }

  /** What is throttled together: one address, or the network that one customer commands. */
  String network() {
    return text.indexOf(':') < 0 ? text : groups(GROUPS_OF_NETWORK);
  }

  /** What the log keeps: enough to see a pattern, too little to find a household. */
  String shortened() {
    int dot = text.lastIndexOf('.');
    return text.indexOf(':') >= 0
        ? groups(GROUPS_IN_LOG) + "…"
        : dot < 0 ? text : text.substring(0, dot + 1) + "…";
  }

  private String groups(int count) {
    String[] groups = COLON.split(text, count + 1);
    int kept = Math.min(count, groups.length);
    return String.join(":", Arrays.copyOf(groups, kept)) + ":";
  }
}
