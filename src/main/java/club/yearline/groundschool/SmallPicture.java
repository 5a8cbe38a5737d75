package club.yearline.groundschool;

import club.yearline.catalog.StoredPicture;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/** A picture no larger than paper shows it, so that a hand-out can be mailed. */
final class SmallPicture {

  /** At the width of a third of a sheet, more dots cannot be seen. */
  static final int WIDEST = 640;

  private SmallPicture() {}

  /** The picture's content; photographs that are wider than needed are made anew. */
  static byte[] of(StoredPicture picture) {
    if (picture.mediaType().equals("image/svg+xml")) {
      return picture.bytes();
    }
    try {
      BufferedImage read = ImageIO.read(new ByteArrayInputStream(picture.bytes()));
      return read == null || read.getWidth() <= WIDEST ? picture.bytes() : scaled(read);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] scaled(BufferedImage picture) throws IOException {
    int height = Math.max(1, picture.getHeight() * WIDEST / picture.getWidth());
    BufferedImage small = new BufferedImage(WIDEST, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = small.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    pen.drawImage(picture, 0, 0, WIDEST, height, Color.WHITE, null);
    pen.dispose();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(small, "jpeg", out);
    return out.toByteArray();
  }
}
