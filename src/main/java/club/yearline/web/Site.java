package club.yearline.web;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.web.util.UriComponents;
import org.springframework.web.util.UriComponentsBuilder;

/** What templates may ask of the site while a request is answered: {@code ${#site.…}}. */
public final class Site {

  private final Assets assets;
  private final List<Section> sections;
  private final String contextPath;
  private final String requested;
  private final @Nullable Object revision;
  private final Caller caller;

  Site(
      Assets assets,
      List<Section> sections,
      String contextPath,
      String requested,
      @Nullable Object revision,
      Caller caller) {
    this.assets = assets;
    this.sections = sections;
    this.contextPath = contextPath;
    this.requested = requested;
    this.revision = revision;
    this.caller = caller;
  }

  /** The sections in the header's order. */
  public List<Section> getSections() {
    return sections;
  }

  /** Who looks at the page. */
  public Caller getCaller() {
    return caller;
  }

  /** Where a visitor signs in, and comes back from to this page. */
  public String getSignIn() {
    return UriComponentsBuilder.fromPath(contextPath + "/sign-in")
        .queryParam("to", "{to}")
        .encode()
        .buildAndExpand(here(UriComponentsBuilder.fromUriString(requested)))
        .toUriString();
  }

  /** Path and query of an address, within the application. */
  private String here(UriComponentsBuilder address) {
    UriComponents page = address.build();
    String path = Objects.requireNonNullElse(page.getPath(), "/");
    String here = path.startsWith(contextPath) ? path.substring(contextPath.length()) : path;
    return page.getQuery() == null ? here : here + "?" + page.getQuery();
  }

  /** Where this page, as of the revision that it shows, is cited; null where it shows none. */
  public @Nullable String getCite() {
    return revision == null
        ? null
        : UriComponentsBuilder.fromPath(contextPath + "/cite")
            .queryParam("page", "{page}")
            .queryParam("rev", "{rev}")
            .encode()
            .buildAndExpand(
                here(UriComponentsBuilder.fromUriString(requested).replaceQueryParam("rev")),
                revision)
            .toUriString();
  }

  /** The address of a path of ours. */
  public String path(String path) {
    return contextPath + path;
  }

  /** The address of a static file, with the hash of its content. */
  public String asset(String path) {
    return contextPath + assets.address(path);
  }

  /**
   * The full address of this page, to be read from paper. Where the page shows a revision, the
   * address names it, so that it leads to the same answer for ever.
   */
  public String getAddress() {
    UriComponentsBuilder address = UriComponentsBuilder.fromUriString(requested);
    if (revision != null) {
      address.replaceQueryParam("rev", revision);
    }
    return address.build().toUriString();
  }

  /** The address of this page at the newest revision. */
  public String getNewest() {
    return UriComponentsBuilder.fromUriString(requested)
        .replaceQueryParam("rev")
        .build()
        .toUriString();
  }

  /** The ids of a field's hint and fault, for {@code aria-describedby}; null where it has none. */
  public @Nullable String describedBy(String field, @Nullable String hint, @Nullable String fault) {
    if (hint == null || hint.isEmpty()) {
      return fault == null ? null : field + "-fault";
    }
    return fault == null ? field + "-hint" : field + "-fault " + field + "-hint";
  }
}
