package club.yearline.uploads;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/** Decodes pictures of dots that may have been made to do harm. */
final class Raster {

  /** Every dot is decoded. */
  static final Thinning WHOLE = (width, height) -> 1;

  /** More than any camera or scanner makes; each costs a pass over the whole picture. */
  private static final int MOST_SCANS = 200;

  private static final int START_OF_SCAN = 0xda;

  static {
    // Readers from libraries are found only by the class loader that was there at first use.
    ImageIO.scanForPlugins();
  }

  private Raster() {}

  /** Says of how many dots in a row and column one is decoded. */
  interface Thinning {
    int of(int width, int height);
  }

  /**
   * The dots of a picture, without anything else that comes with it.
   *
   * @throws NotTaken if it is broken, or has more dots than {@code mostDots}
   */
  static BufferedImage decode(byte[] bytes, PictureType type, long mostDots, Thinning thinning)
      throws NotTaken {
    refuseManyScans(bytes, type);
    try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
      ImageReader reader = reader(type);
      try {
        reader.setInput(in, true, true);
        return decode(reader, mostDots, thinning);
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

  private static BufferedImage decode(ImageReader reader, long mostDots, Thinning thinning)
      throws IOException, NotTaken {
    int width = reader.getWidth(0);
    int height = reader.getHeight(0);
    if ((long) width * height > mostDots) {
      throw new NotTaken("picture-too-large", width, height, mostDots);
    }
    ImageReadParam parameters = reader.getDefaultReadParam();
    int step = thinning.of(width, height);
    if (step > 1) {
      parameters.setSourceSubsampling(step, step, 0, 0);
    }
    return reader.read(0, parameters);
  }

  /** Coded dots never hold the marker of a scan: there a 0 follows what could begin one. */
  private static void refuseManyScans(byte[] bytes, PictureType type) throws NotTaken {
    if (type != PictureType.JPEG) {
      return;
    }
    int scans = 0;
    for (int i = 1; i < bytes.length; i++) {
      if (bytes[i - 1] == (byte) 0xff && bytes[i] == (byte) START_OF_SCAN) {
        scans++;
      }
    }
    if (scans > MOST_SCANS) {
      throw new NotTaken("broken-picture", type, scans + " scans");
    }
  }
}
