package club.yearline.citing;

import club.yearline.web.Refusal;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.util.MultiValueMap;
import org.springframework.web.util.UriComponents;
import org.springframework.web.util.UriComponentsBuilder;
import org.springframework.web.util.UriUtils;

/**
 * The address of a page of ours, without its revision.
 *
 * @param path the path within the application, as it stands in an address
 * @param query the query as it stands in an address; null where there is none
 * @param revision the revision that the address named itself; null where it named none
 */
record PageAddress(String path, @Nullable String query, @Nullable String revision) {

  private static final String REV = "rev";

  /** Longer addresses are not of our making, and do not fit into a square code either. */
  private static final int LONGEST = 1500;

  /**
   * Reads an address.
   *
   * @throws Refusal if it is none of ours
   */
  static PageAddress read(String text) {
    URI uri = ours(text);
    UriComponents page = UriComponentsBuilder.fromUriString(uri.toASCIIString()).build();
    String rest =
        UriComponentsBuilder.newInstance()
            .query(Objects.requireNonNullElse(page.getQuery(), ""))
            .replaceQueryParam(REV)
            .build()
            .getQuery();
    return new PageAddress(
        uri.getRawPath(),
        rest == null || rest.isEmpty() ? null : rest,
        page.getQueryParams().getFirst(REV));
  }

  /** Only a path and a query of ours pass: no scheme, no host, nothing that a browser mends. */
  private static URI ours(String text) {
    if (text.length() > LONGEST || !text.startsWith("/") || text.startsWith("//")) {
      throw refusal(text);
    }
    try {
      URI uri = new URI(text);
      if (uri.getRawAuthority() != null
          || uri.getRawFragment() != null
          || !uri.normalize().equals(uri)) {
        throw refusal(text);
      }
      return uri;
    } catch (URISyntaxException e) {
      throw refusal(text);
    }
  }

  static Refusal refusal(String text) {
    return Refusal.notFound("page-not-citable", text).at("page");
  }

  /** The same page at a revision: the permalink, within the application. */
  String at(int number) {
    return path + "?" + (query == null ? "" : query + "&") + REV + "=" + number;
  }

  /** Path and query. */
  String text() {
    return query == null ? path : path + "?" + query;
  }

  /** The parts of the path, in plain text. */
  List<String> steps() {
    return UriComponentsBuilder.fromPath(path).build().getPathSegments().stream()
        .map(step -> UriUtils.decode(step, StandardCharsets.UTF_8))
        .toList();
  }

  /** What the query gives for a name, in plain text; null where it gives nothing. */
  @Nullable String given(String name) {
    MultiValueMap<String, String> all =
        UriComponentsBuilder.newInstance()
            .query(Objects.requireNonNullElse(query, ""))
            .build()
            .getQueryParams();
    String value = all.getFirst(name);
    return value == null
        ? null
        : UriUtils.decode(value.replace('+', ' '), StandardCharsets.UTF_8).strip();
  }
}
