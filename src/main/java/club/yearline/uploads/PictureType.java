package club.yearline.uploads;

import java.util.Arrays;
import java.util.Optional;

/** The kinds of pictures that are taken, told by content, never by name. */
public enum PictureType {
  PNG("image/png"),
  JPEG("image/jpeg"),
  WEBP("image/webp"),
  SVG("image/svg+xml");

  private static final byte[] PNG_START = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
  private static final byte[] JPEG_START = {(byte) 0xff, (byte) 0xd8, (byte) 0xff};
  private static final byte[] RIFF = {'R', 'I', 'F', 'F'};
  private static final byte[] WEBP_MARK = {'W', 'E', 'B', 'P'};
  private static final int WEBP_MARK_AT = 8;

  private final String mediaType;

  PictureType(String mediaType) {
    this.mediaType = mediaType;
  }

  /** The name of the kind on the network. */
  public String mediaType() {
    return mediaType;
  }

  /**
   * The kind of a picture, which was then decoded, or for a drawing read to its end.
   *
   * @throws NotTaken if it is none, is broken, or a drawing that does more than draw
   */
  public static PictureType of(byte[] bytes) throws NotTaken {
    PictureType type = byStart(bytes).orElseThrow(() -> new NotTaken("not-a-picture"));
    if (type == SVG) {
      new SvgCheck().check(bytes);
    } else {
      RasterCheck.check(bytes, type);
    }
    return type;
  }

  /** The kind that the first bytes promise; empty if they promise none. */
  static Optional<PictureType> byStart(byte[] bytes) {
    if (has(bytes, 0, PNG_START)) {
      return Optional.of(PNG);
    }
    if (has(bytes, 0, JPEG_START)) {
      return Optional.of(JPEG);
    }
    if (has(bytes, 0, RIFF) && has(bytes, WEBP_MARK_AT, WEBP_MARK)) {
      return Optional.of(WEBP);
    }
    return looksLikeXml(bytes) ? Optional.of(SVG) : Optional.empty();
  }

  private static boolean has(byte[] bytes, int at, byte[] mark) {
    return bytes.length >= at + mark.length
        && Arrays.equals(bytes, at, at + mark.length, mark, 0, mark.length);
  }

  /** Whether the first character that is neither blank nor a byte-order mark opens a tag. */
  private static boolean looksLikeXml(byte[] bytes) {
    int at = has(bytes, 0, new byte[] {(byte) 0xef, (byte) 0xbb, (byte) 0xbf}) ? 3 : 0;
    while (at < bytes.length && bytes[at] > 0 && bytes[at] <= ' ') {
      at++;
    }
    return at < bytes.length && bytes[at] == '<';
  }
}
