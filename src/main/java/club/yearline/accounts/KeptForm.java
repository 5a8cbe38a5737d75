package club.yearline.accounts;

import jakarta.servlet.http.HttpServletRequest;
import java.io.Serializable;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;

/**
 * What somebody had typed when the session was lost: kept through sign-in, shown, and sent only
 * when the person says so. Files are not kept, nor is anything that looks like a password.
 *
 * @param path where the form was to go
 * @param fields what it held, in order
 */
record KeptForm(String path, List<Field> fields) implements Serializable {

  /** More than any form of ours holds. */
  private static final int LONGEST = 200_000;

  private static final int MOST_FIELDS = 400;

  /** The token of the form, the present password, and what a device signed. */
  private static final Set<String> UNKEPT = Set.of("_csrf", "current", "credential");

  /** A character takes up to three bytes, each written with three signs. */
  private static final int BYTES_ENCODED = 9;

  /** One field of a form. */
  record Field(String name, String value) implements Serializable {}

  KeptForm {
    fields = List.copyOf(fields);
  }

  static boolean canKeep(HttpServletRequest request) {
    Map<String, String[]> all = request.getParameterMap();
    long length = 0;
    long count = 0;
    for (Map.Entry<String, String[]> entry : all.entrySet()) {
      for (String value : entry.getValue()) {
        length += entry.getKey().length() + value.length();
        count++;
      }
    }
    return request.getMethod().equals("POST") && length <= LONGEST && count <= MOST_FIELDS;
  }

  static KeptForm of(HttpServletRequest request) {
    List<Field> fields = new ArrayList<>();
    request
        .getParameterMap()
        .forEach(
            (name, values) -> {
              for (String value : values) {
                if (mayKeep(name)) {
                  fields.add(new Field(name, value));
                }
              }
            });
    return new KeptForm(ReturnPath.of(request), fields);
  }

  /** Whether the form came with files, which are lost. */
  static boolean hadFiles(HttpServletRequest request) {
    String type = request.getContentType();
    return type != null && type.startsWith(MediaType.MULTIPART_FORM_DATA_VALUE);
  }

  /** As one hidden field carries it: an address with a query. */
  String written() {
    return fields.stream()
        .map(f -> encoded(f.name()) + "=" + encoded(f.value()))
        .collect(Collectors.joining("&", path + "?", ""));
  }

  /** Reads what {@link #written} wrote; empty if it is something else, or too long. */
  static Optional<KeptForm> read(@Nullable String text) {
    int mark = text == null ? -1 : text.indexOf('?');
    if (text == null || mark < 0 || text.length() > LONGEST * BYTES_ENCODED) {
      return Optional.empty();
    }
    String path = text.substring(0, mark);
    if (ReturnPath.orElse(path, "").isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(new KeptForm(path, fields(text.substring(mark + 1))));
    } catch (IllegalArgumentException e) {
      // Not of our writing: somebody has changed the hidden field.
      return Optional.empty();
    }
  }

  private static List<Field> fields(String query) {
    List<Field> fields = new ArrayList<>();
    for (String pair : query.split("&", MOST_FIELDS)) {
      int equals = pair.indexOf('=');
      if (equals > 0) {
        fields.add(
            new Field(decoded(pair.substring(0, equals)), decoded(pair.substring(equals + 1))));
      }
    }
    return fields;
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  private static String decoded(String text) {
    return URLDecoder.decode(text, StandardCharsets.UTF_8);
  }

  private static boolean mayKeep(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    return !UNKEPT.contains(lower) && !lower.contains("password") && !lower.contains("secret");
  }
}
