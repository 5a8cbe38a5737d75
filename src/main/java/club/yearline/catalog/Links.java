package club.yearline.catalog;

import club.yearline.effectivity.Picture;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.SerialBlock;
import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.web.util.UriUtils;

/**
 * Addresses that a page links to, at the reading's revision, ready to print. They are made once for
 * each view: building links in a template's loop costs more than all the rest of a page.
 *
 * @param reading what the page reads
 * @param root the application's context path
 */
public record Links(Reading reading, String root) {

  /** The addresses for the page that a request asks for. */
  public static Links of(Reading reading, HttpServletRequest request) {
    return new Links(reading, request.getContextPath());
  }

  /** The first page. */
  public String home() {
    return at("/");
  }

  /** The list of families. */
  public String families() {
    return at("/families");
  }

  /** What the one box makes of a serial. */
  public String serial(String text) {
    return expected(null, null, text);
  }

  /** One published revision; revisions have no reading of their own. */
  public String revision(int number) {
    return revisions() + "/" + number;
  }

  /** The published history. */
  public String revisions() {
    return root + "/revisions";
  }

  /** A feature. */
  public String feature(String key) {
    return entry("/features/", key);
  }

  /** A change. */
  public String change(String key) {
    return entry("/changes/", key);
  }

  /** What observed airframes say about a change. */
  public String observed(String change) {
    return at(
        "/changes/" + UriUtils.encodePathSegment(change, StandardCharsets.UTF_8) + "/evidence");
  }

  /** A source. */
  public String source(String key) {
    return entry("/sources/", key);
  }

  /** A variant. */
  public String variant(String key) {
    return entry("/variants/", key);
  }

  /** A family. */
  public String family(String key) {
    return entry("/families/", key);
  }

  /** Pictures are addressed by content, so they are the same at every revision. */
  public String picture(Picture picture) {
    return root
        + "/pictures/"
        + picture.sha256()
        + "/"
        + UriUtils.encodePathSegment(picture.name(), StandardCharsets.UTF_8);
  }

  /** The expected configuration of a position, with all that it knows. */
  public String expected(Position position) {
    return expected(position.variant().key(), position.year(), position.serialText());
  }

  /** The expected configuration of a block's year; of its variant alone where it has none. */
  public String expected(SerialBlock block) {
    return block.year() == null
        ? variant(block.variant())
        : expected(block.variant(), block.year(), null);
  }

  /** The expected configuration that a question asks for. */
  public String expected(
      @Nullable String variant, @Nullable Integer year, @Nullable String serial) {
    StringBuilder path = new StringBuilder("/expected");
    add(path, "serial", serial);
    add(path, "variant", variant);
    add(path, "year", year == null ? null : year.toString());
    return at(path.toString());
  }

  /** Two variant-years side by side. */
  public String differences(Position from, Position to) {
    return at("/differences?from=" + variantYear(from) + "&to=" + variantYear(to));
  }

  /** The figures of variant-years side by side. */
  public String compare(List<Position> positions) {
    return at(
        positions.stream()
            .map(p -> "v=" + variantYear(p))
            .collect(Collectors.joining("&", "/compare?", "")));
  }

  /** An address of ours at the reading's revision. */
  public String at(String path) {
    return root + reading.link(path);
  }

  private static String variantYear(Position position) {
    return encoded(position.variant().key()) + ":" + position.year();
  }

  private String entry(String place, String key) {
    return at(place + UriUtils.encodePathSegment(key, StandardCharsets.UTF_8));
  }

  private static void add(StringBuilder path, String name, @Nullable String value) {
    if (value != null) {
      path.append(path.indexOf("?") < 0 ? '?' : '&');
      path.append(name).append('=').append(encoded(value));
    }
  }

  private static String encoded(String text) {
    return UriUtils.encode(text, StandardCharsets.UTF_8);
  }
}
