package club.yearline.browse;

import club.yearline.catalog.Reading;
import club.yearline.effectivity.Picture;
import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import org.springframework.web.util.UriUtils;

/**
 * Addresses of pages of one reading, made once for each view: building links in a template's loop
 * costs more than all the rest of a page.
 */
record Links(Reading reading, String contextPath) {

  static Links of(Reading reading, HttpServletRequest request) {
    return new Links(reading, request.getContextPath());
  }

  String home() {
    return within("/");
  }

  String families() {
    return within("/families");
  }

  String family(String key) {
    return within("/families/" + path(key));
  }

  String variant(String key) {
    return within("/variants/" + path(key));
  }

  String feature(String key) {
    return within("/features/" + path(key));
  }

  String source(String key) {
    return within("/sources/" + path(key));
  }

  String serial(String text) {
    return within("/expected?serial=" + query(text));
  }

  /** The expected configuration of a variant, in a year where one is known, by serial likewise. */
  String expected(String variant, @Nullable Integer year, @Nullable String serial) {
    String by = year == null ? "" : "&year=" + year;
    String of = serial == null ? "" : "&serial=" + query(serial);
    return within("/expected?variant=" + query(variant) + by + of);
  }

  /** Revisions have no reading of their own. */
  String revision(int number) {
    return contextPath + "/revisions/" + number;
  }

  String revisions() {
    return contextPath + "/revisions";
  }

  /** A picture has one address for ever: that of its content. */
  String picture(Picture picture) {
    return contextPath + "/pictures/" + picture.sha256() + "/" + path(picture.name());
  }

  private String within(String path) {
    return contextPath + reading.link(path);
  }

  private static String path(String text) {
    return UriUtils.encodePathSegment(text, StandardCharsets.UTF_8);
  }

  private static String query(String text) {
    return UriUtils.encode(text, StandardCharsets.UTF_8);
  }
}
