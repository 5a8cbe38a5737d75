package club.yearline.uploads;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/** Decodes a picture of dots, after a look at its size. */
final class RasterCheck {

  /** The most dots: some bytes can claim a picture that fills the memory. */
  private static final long MOST_DOTS = 25_000_000;

  static {
    // Readers from libraries are found only by the class loader that was there at first use.
    ImageIO.scanForPlugins();
  }

  private RasterCheck() {}

  static void check(byte[] bytes, PictureType type) throws NotTaken {
    try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
      ImageReader reader = reader(type);
      try {
        reader.setInput(in);
        decode(reader);
      } finally {
        reader.dispose();
      }
    } catch (IOException | RuntimeException e) {
      // Decoders throw runtime exceptions of many kinds at bytes that were made to break them.
      throw new NotTaken("broken-picture", type, String.valueOf(e.getMessage()));
    }
  }

  private static ImageReader reader(PictureType type) {
    Iterator<ImageReader> readers = ImageIO.getImageReadersByMIMEType(type.mediaType());
    if (!readers.hasNext()) {
      throw new IllegalStateException("No decoder for " + type.mediaType());
    }
    return readers.next();
  }

  private static void decode(ImageReader reader) throws IOException, NotTaken {
    long dots = (long) reader.getWidth(0) * reader.getHeight(0);
    if (dots > MOST_DOTS) {
      throw new NotTaken("picture-too-large", reader.getWidth(0), reader.getHeight(0), MOST_DOTS);
    }
    BufferedImage image = reader.read(0);
    image.flush();
  }
}
