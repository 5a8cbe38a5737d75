package club.yearline.catalog;

import club.yearline.effectivity.Picture;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A picture to publish.
 *
 * @param name file name under which entries name it
 * @param mediaType its type, judged by content
 * @param bytes its content; not copied, so not to be changed
 */
public record PictureFile(String name, String mediaType, byte[] bytes) {

  /** The picture as the catalogue lists it: by the digest of its content. */
  public Picture picture() {
    return new Picture(name, mediaType, sha256(bytes));
  }

  private static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java platform has SHA-256", e);
    }
  }
}
