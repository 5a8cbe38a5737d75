package club.yearline.uploads;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import java.awt.geom.AffineTransform;
import java.io.ByteArrayInputStream;
import java.io.IOException;

/**
 * How a camera was held, as it says beside the dots: what must be done to them to see the picture
 * upright.
 *
 * @param mirrored first mirrored left to right
 * @param quarters then turned right by so many quarters
 */
record Turn(boolean mirrored, int quarters) {

  /** Upright already. */
  static final Turn NONE = new Turn(false, 0);

  /** What a picture says; {@link #NONE} where it says nothing that can be read. */
  static Turn of(byte[] bytes) {
    try {
      Metadata metadata = ImageMetadataReader.readMetadata(new ByteArrayInputStream(bytes));
      for (Directory directory : metadata.getDirectoriesOfType(ExifIFD0Directory.class)) {
        Integer orientation = directory.getInteger(ExifIFD0Directory.TAG_ORIENTATION);
        if (orientation != null) {
          return of(orientation);
        }
      }
      return NONE;
    } catch (ImageProcessingException | IOException | RuntimeException e) {
      // What comes beside the dots may be broken while the dots are sound; it is thrown away.
      return NONE;
    }
  }

  /** The eight orientations of Exif, by number; any other is taken as upright. */
  static Turn of(int orientation) {
    return switch (orientation) {
      case 2 -> new Turn(true, 0);
      case 3 -> new Turn(false, 2);
      case 4 -> new Turn(true, 2);
      case 5 -> new Turn(true, 3);
      case 6 -> new Turn(false, 1);
      case 7 -> new Turn(true, 1);
      case 8 -> new Turn(false, 3);
      default -> NONE;
    };
  }

  /** Whether width and height change places. */
  boolean isSideways() {
    return quarters % 2 == 1;
  }

  /** Moves dots of a picture of this size, and scales what comes of it. */
  AffineTransform transform(int width, int height, double scale) {
    AffineTransform upright = AffineTransform.getScaleInstance(scale, scale);
    upright.translate((isSideways() ? height : width) / 2.0, (isSideways() ? width : height) / 2.0);
    upright.quadrantRotate(quarters);
    if (mirrored) {
      upright.scale(-1, 1);
    }
    upright.translate(-width / 2.0, -height / 2.0);
    return upright;
  }
}
