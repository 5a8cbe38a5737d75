package club.yearline.groundschool;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.catalog.StoredPicture;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class SmallPictureTest {

  @Test
  void makesWidePhotographsSmallAndLeavesOthersAsTheyAre() throws IOException {
    StoredPicture wide = new StoredPicture("image/png", noise(2000, 1000));
    BufferedImage small = ImageIO.read(new ByteArrayInputStream(SmallPicture.of(wide)));
    assertThat(small.getWidth()).isEqualTo(SmallPicture.WIDEST);
    assertThat(small.getHeight()).isEqualTo(SmallPicture.WIDEST / 2);
    assertThat(SmallPicture.of(wide).length).isLessThan(wide.bytes().length / 10);
    StoredPicture narrow = new StoredPicture("image/png", noise(300, 200));
    assertThat(SmallPicture.of(narrow)).isEqualTo(narrow.bytes());
    StoredPicture drawing = new StoredPicture("image/svg+xml", new byte[] {'<', 's'});
    assertThat(SmallPicture.of(drawing)).isEqualTo(drawing.bytes());
  }

  private static byte[] noise(int width, int height) throws IOException {
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Random random = new Random(1);
    for (int x = 0; x < width; x++) {
      for (int y = 0; y < height; y++) {
        picture.setRGB(x, y, random.nextInt());
      }
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(picture, "png", out);
    return out.toByteArray();
  }
}
