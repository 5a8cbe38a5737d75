package club.yearline.uploads;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/** Pictures for tests, and what cameras and others put beside the dots. Layouts from memory. */
public final class Shots {

  private Shots() {}

  /** Four quarters: red and green above, blue and white below. */
  public static BufferedImage quarters(int width, int height, int type) {
    BufferedImage image = new BufferedImage(width, height, type);
    Graphics2D graphics = image.createGraphics();
    Color[] colours = {Color.RED, Color.GREEN, Color.BLUE, Color.WHITE};
    for (int i = 0; i < colours.length; i++) {
      graphics.setColor(colours[i]);
      graphics.fillRect(i % 2 * width / 2, i / 2 * height / 2, width / 2, height / 2);
    }
    graphics.dispose();
    return image;
  }

  /** A picture as a file. */
  public static byte[] file(BufferedImage image, String format) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      if (!ImageIO.write(image, format, out)) {
        throw new IllegalArgumentException("Nothing writes " + format);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /** A photograph that says where it was taken, who took it, and how the camera was held. */
  public static byte[] withPlace(int orientation) {
    return tagged(quarters(64, 32, BufferedImage.TYPE_INT_RGB), orientation);
  }

  static byte[] tagged(BufferedImage image, int orientation) {
    byte[] photograph = file(image, "jpeg");
    photograph =
        withSegment(photograph, 0xfe, "taken by Ann Other".getBytes(StandardCharsets.US_ASCII));
    String xmp =
        "http://ns.adobe.com/xap/1.0/\0<x:xmpmeta xmlns:x='adobe:ns:meta/'>"
            + "<rdf:RDF xmlns:rdf='http://www.w3.org/1999/02/22-rdf-syntax-ns#'/></x:xmpmeta>";
    photograph = withSegment(photograph, 0xe1, xmp.getBytes(StandardCharsets.UTF_8));
    return withSegment(photograph, 0xe1, exif(orientation));
  }

  /** A JPEG with one more segment behind its first marker. */
  static byte[] withSegment(byte[] jpeg, int marker, byte[] content) {
    return ByteBuffer.allocate(jpeg.length + content.length + 4)
        .put(jpeg, 0, 2)
        .put((byte) 0xff)
        .put((byte) marker)
        .putShort((short) (content.length + 2))
        .put(content)
        .put(jpeg, 2, jpeg.length - 2)
        .array();
  }

  /** Exif: an orientation, and a place at 57 degrees north. */
  static byte[] exif(int orientation) {
    ByteBuffer exif = ByteBuffer.allocate(6 + 8 + 2 + 24 + 4 + 2 + 24 + 4 + 24);
    exif.put("Exif\0\0MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
    exif.putShort((short) 2);
    entry(exif, 0x0112, 3, 1).putShort((short) orientation).putShort((short) 0);
    entry(exif, 0x8825, 4, 1).putInt(38);
    exif.putInt(0);
    exif.putShort((short) 2);
    entry(exif, 1, 2, 2).put(new byte[] {'N', 0, 0, 0});
    entry(exif, 2, 5, 3).putInt(68);
    exif.putInt(0);
    exif.putInt(57).putInt(1).putInt(30).putInt(1).putInt(0).putInt(1);
    return exif.array();
  }

  private static ByteBuffer entry(ByteBuffer exif, int tag, int type, int count) {
    return exif.putShort((short) tag).putShort((short) type).putInt(count);
  }

  /** A PNG that claims another size. */
  static byte[] claiming(byte[] png, int width, int height) {
    byte[] claiming = png.clone();
    ByteBuffer.wrap(claiming).putInt(16, width).putInt(20, height);
    CRC32 sum = new CRC32();
    sum.update(claiming, 12, 17);
    ByteBuffer.wrap(claiming).putInt(29, (int) sum.getValue());
    return claiming;
  }

  static byte[] joined(byte[] first, byte[] second) {
    return ByteBuffer.allocate(first.length + second.length).put(first).put(second).array();
  }

  /** Opens a picture. */
  public static BufferedImage open(byte[] bytes) {
    try {
      return ImageIO.read(new ByteArrayInputStream(bytes));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
