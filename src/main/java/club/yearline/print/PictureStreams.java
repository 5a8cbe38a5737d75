package club.yearline.print;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.extend.FSStreamFactory;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;

/** Hands pictures to the library under a scheme of our own, and nothing under any other. */
final class PictureStreams implements FSStreamFactory {

  static final String SCHEME = "picture";

  /** Where a page lies, as far as the library wants to know. */
  static final String BASE = SCHEME + ":page";

  private final Pictures pictures;

  PictureStreams(Pictures pictures) {
    this.pictures = pictures;
  }

  static boolean isPicture(String uri) {
    return uri.startsWith(SCHEME + ":");
  }

  @Override
  public FSStream getUrl(String uri) {
    byte[] bytes =
        isPicture(uri) ? pictures.named(name(uri)).orElseGet(() -> new byte[0]) : new byte[0];
    return new Bytes(bytes);
  }

  private static String name(String uri) {
    return URLDecoder.decode(uri.substring(SCHEME.length() + 1), StandardCharsets.UTF_8);
  }

  private record Bytes(byte[] bytes) implements FSStream {

    @Override
    public InputStream getStream() {
      return new ByteArrayInputStream(bytes);
    }

    @Override
    public Reader getReader() {
      return new InputStreamReader(getStream(), StandardCharsets.UTF_8);
    }
  }
}
