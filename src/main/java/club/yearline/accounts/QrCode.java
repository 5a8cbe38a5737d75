package club.yearline.accounts;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import java.util.Map;

/**
 * A square code as a drawing.
 *
 * @param size squares along a side, with the quiet zone
 * @param path the dark squares, as the path of an SVG drawing
 */
public record QrCode(int size, String path) {

  private static final int QUIET = 4;

  /** The code of a text. */
  public static QrCode of(String text) {
    try {
      BitMatrix squares =
          new QRCodeWriter()
              .encode(text, BarcodeFormat.QR_CODE, 0, 0, Map.of(EncodeHintType.MARGIN, QUIET));
      return new QrCode(squares.getWidth(), path(squares));
    } catch (WriterException e) {
      throw new IllegalArgumentException("Too long for a square code", e);
    }
  }

  private static String path(BitMatrix squares) {
    StringBuilder path = new StringBuilder();
    for (int y = 0; y < squares.getHeight(); y++) {
      for (int x = 0; x < squares.getWidth(); x++) {
        if (squares.get(x, y)) {
          path.append('M').append(x).append(' ').append(y).append("h1v1h-1z");
        }
      }
    }
    return path.toString();
  }
}
