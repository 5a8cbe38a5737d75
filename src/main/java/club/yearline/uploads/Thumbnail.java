package club.yearline.uploads;

import java.awt.image.BufferedImage;

/** Makes small pictures of those that are kept, to be looked at in lists. */
final class Thumbnail {

  private static final int LONGEST_SIDE = 320;

  private Thumbnail() {}

  /** A small JPEG of a picture that was taken before. */
  static byte[] of(byte[] bytes) throws NotTaken {
    PictureType type = PictureType.byStart(bytes).orElseThrow(() -> new NotTaken("not-a-picture"));
    BufferedImage decoded =
        Raster.decode(
            bytes,
            type,
            Photograph.MOST_DOTS,
            // Twice as fine as is kept, so that thin lines do not vanish.
            (width, height) -> Math.max(1, Math.max(width, height) / (2 * LONGEST_SIDE)));
    return Photograph.small(decoded, LONGEST_SIDE);
  }
}
