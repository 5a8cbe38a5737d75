package club.yearline.expected;

import club.yearline.catalog.Reading;
import club.yearline.effectivity.Picture;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.SerialBlock;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import org.springframework.web.util.UriUtils;

/**
 * Addresses that a page links to, at the reading's revision, ready to print.
 *
 * @param reading what the page reads
 * @param root the application's context path
 */
record Links(Reading reading, String root) {

  String feature(String key) {
    return entry("/features/", key);
  }

  String change(String key) {
    return entry("/changes/", key);
  }

  String source(String key) {
    return entry("/sources/", key);
  }

  String variant(String key) {
    return entry("/variants/", key);
  }

  String family(String key) {
    return entry("/families/", key);
  }

  /** Pictures are addressed by content, so they are the same at every revision. */
  String picture(Picture picture) {
    return root
        + "/pictures/"
        + picture.sha256()
        + "/"
        + UriUtils.encodePathSegment(picture.name(), StandardCharsets.UTF_8);
  }

  /** The expected configuration of a position, with all that it knows. */
  String expected(Position position) {
    return expected(position.variant().key(), position.year(), position.serialText());
  }

  /** The expected configuration of a block's year; of its variant alone where it has none. */
  String expected(SerialBlock block) {
    return block.year() == null
        ? variant(block.variant())
        : expected(block.variant(), block.year(), null);
  }

  String expected(@Nullable String variant, @Nullable Integer year, @Nullable String serial) {
    StringBuilder path = new StringBuilder("/expected");
    add(path, "serial", serial);
    add(path, "variant", variant);
    add(path, "year", year == null ? null : year.toString());
    return at(path.toString());
  }

  String differences(Position from, Position to) {
    return at("/differences?from=" + variantYear(from) + "&to=" + variantYear(to));
  }

  /** An address of ours at the reading's revision. */
  String at(String path) {
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
