package club.yearline.catalog;

import club.yearline.effectivity.Picture;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A picture to publish.
 *
 * @param picture the picture as the catalogue lists it: by the digest of its content
 * @param bytes its content; not copied, so not to be changed
 */
public record PictureFile(Picture picture, byte[] bytes) {

  /** A picture with its name, its type as judged by content, and its content. */
  public PictureFile(String name, String mediaType, byte[] bytes) {
    this(new Picture(name, mediaType, sha256(bytes)), bytes);
  }

  /** The file name under which entries name it. */
  public String name() {
    return picture.name();
  }

  private static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java platform has SHA-256", e);
    }
  }
}
