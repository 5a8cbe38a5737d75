package club.yearline.uploads;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * A picture made anew from nothing but its dots: upright, of bounded size, and without what came
 * beside them, such as where and when it was taken.
 *
 * @param type PNG or JPEG
 * @param bytes its content; not copied, so not to be changed
 */
record Photograph(PictureType type, byte[] bytes) {

  /** The longest side that is kept; the usual photograph of a telephone stays as it is. */
  static final int LONGEST_SIDE = 4096;

  /** The most dots that are looked at. */
  static final long MOST_DOTS = 55_000_000;

  /** The most dots held in memory at a time. */
  private static final double HELD = 25_000_000;

  private static final float QUALITY = 0.88f;

  /**
   * Makes a picture anew. One without loss stays so, unless that takes more than {@code mostBytes}.
   *
   * @throws NotTaken if it is broken or too large
   */
  static Photograph of(byte[] bytes, PictureType type, int mostBytes) throws NotTaken {
    BufferedImage decoded = Raster.decode(bytes, type, MOST_DOTS, Photograph::thinning);
    boolean clear = decoded.getColorModel().hasAlpha();
    BufferedImage upright = upright(decoded, Turn.of(bytes), clear, LONGEST_SIDE);
    decoded.flush();
    if (clear || type == PictureType.PNG) {
      byte[] exact = png(upright);
      if (exact.length <= mostBytes) {
        return new Photograph(PictureType.PNG, exact);
      }
    }
    return new Photograph(PictureType.JPEG, jpeg(clear ? onWhite(upright) : upright));
  }

  /** A small JPEG of what was made anew before, and so is upright. */
  static byte[] small(BufferedImage decoded, int longestSide) {
    boolean clear = decoded.getColorModel().hasAlpha();
    BufferedImage drawn = upright(decoded, Turn.NONE, clear, longestSide);
    return jpeg(clear ? onWhite(drawn) : drawn);
  }

  private static int thinning(int width, int height) {
    int forMemory = (int) Math.ceil(Math.sqrt((double) width * height / HELD));
    return Math.max(1, Math.max(forMemory, Math.max(width, height) / LONGEST_SIDE));
  }

  /** Draws it anew, which also turns all kinds of colour into those of the web. */
  private static BufferedImage upright(
      BufferedImage decoded, Turn turn, boolean clear, int longestSide) {
    int width = decoded.getWidth();
    int height = decoded.getHeight();
    double scale = Math.min(1, longestSide / (double) Math.max(width, height));
    BufferedImage drawn =
        blank(
            scaled(turn.isSideways() ? height : width, scale),
            scaled(turn.isSideways() ? width : height, scale),
            clear);
    Graphics2D graphics = drawn.createGraphics();
    graphics.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION,
        scale < 1
            ? RenderingHints.VALUE_INTERPOLATION_BILINEAR
            : RenderingHints.VALUE_INTERPOLATION_NEAREST_NEIGHBOR);
    graphics.drawImage(decoded, turn.transform(width, height, scale), null);
    graphics.dispose();
    return drawn;
  }

  private static BufferedImage onWhite(BufferedImage image) {
    BufferedImage drawn = blank(image.getWidth(), image.getHeight(), false);
    Graphics2D graphics = drawn.createGraphics();
    graphics.drawImage(image, 0, 0, Color.WHITE, null);
    graphics.dispose();
    return drawn;
  }

  private static BufferedImage blank(int width, int height, boolean clear) {
    return new BufferedImage(
        width, height, clear ? BufferedImage.TYPE_4BYTE_ABGR : BufferedImage.TYPE_3BYTE_BGR);
  }

  private static int scaled(int side, double scale) {
    return Math.max(1, (int) Math.round(side * scale));
  }

  private static byte[] png(BufferedImage image) {
    return written(image, "png");
  }

  private static byte[] jpeg(BufferedImage image) {
    return written(image, "jpeg");
  }

  private static byte[] written(BufferedImage image, String format) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName(format).next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      writer.setOutput(out);
      ImageWriteParam parameters = writer.getDefaultWriteParam();
      if (format.equals("jpeg")) {
        parameters.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        parameters.setCompressionQuality(QUALITY);
      }
      writer.write(null, new IIOImage(image, null, null), parameters);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }
}
