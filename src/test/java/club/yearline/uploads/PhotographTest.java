package club.yearline.uploads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.GpsDirectory;
import com.drew.metadata.file.FileTypeDirectory;
import com.drew.metadata.jfif.JfifDirectory;
import com.drew.metadata.jpeg.HuffmanTablesDirectory;
import com.drew.metadata.jpeg.JpegCommentDirectory;
import com.drew.metadata.jpeg.JpegDirectory;
import com.drew.metadata.xmp.XmpDirectory;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Photographs keep their dots and nothing else. */
class PhotographTest {

  private static final int MOST = EvidenceReader.MOST_BYTES;

  /** A lossless picture of one dot; bytes from memory, and what a decoder takes. */
  private static final byte[] WEBP =
      Base64.getDecoder().decode("UklGRhoAAABXRUJQVlA4TA0AAAAvAAAAEAcQERGIiP4HAA==");

  private static Photograph made(byte[] bytes, PictureType type) throws NotTaken {
    return Photograph.of(bytes, type, MOST);
  }

  private static Metadata told(byte[] bytes) throws Exception {
    return ImageMetadataReader.readMetadata(new ByteArrayInputStream(bytes));
  }

  private static String refusal(byte[] bytes, PictureType type) {
    NotTaken refused = catchThrowableOfType(NotTaken.class, () -> made(bytes, type));
    assertThat(refused).isNotNull();
    return refused.code();
  }

  @Test
  void whereAndByWhomItWasTakenIsNotKept() throws Exception {
    byte[] sent = Shots.withPlace(1);
    Metadata before = told(sent);
    GpsDirectory place = before.getFirstDirectoryOfType(GpsDirectory.class);
    assertThat(place.getRationalArray(GpsDirectory.TAG_LATITUDE)[0].intValue()).isEqualTo(57);
    assertThat(before.containsDirectoryOfType(XmpDirectory.class)).isTrue();
    assertThat(before.containsDirectoryOfType(JpegCommentDirectory.class)).isTrue();

    Photograph kept = made(sent, PictureType.JPEG);

    assertThat(told(kept.bytes()).getDirectories())
        .extracting(d -> (Class) d.getClass())
        .isSubsetOf(
            JpegDirectory.class,
            JfifDirectory.class,
            HuffmanTablesDirectory.class,
            FileTypeDirectory.class);
  }

  @Test
  void textInAPngIsNotKept() throws Exception {
    byte[] png = Shots.file(Shots.quarters(8, 8, BufferedImage.TYPE_INT_RGB), "png");
    byte[] text = "Comment\0at the north hangar".getBytes(StandardCharsets.ISO_8859_1);
    CRC32 sum = new CRC32();
    byte[] chunk =
        ByteBuffer.allocate(text.length + 8)
            .putInt(text.length)
            .put("tEXt".getBytes(StandardCharsets.US_ASCII))
            .put(text)
            .array();
    sum.update(chunk, 4, chunk.length - 4);
    byte[] sent =
        ByteBuffer.allocate(png.length + chunk.length + 4)
            .put(png, 0, 33)
            .put(chunk)
            .putInt((int) sum.getValue())
            .put(png, 33, png.length - 33)
            .array();
    assertThat(told(sent).getDirectories()).extracting(Directory::getName).contains("PNG-tEXt");

    Photograph kept = made(sent, PictureType.PNG);

    assertThat(told(kept.bytes()).getDirectories())
        .extracting(Directory::getName)
        .doesNotContain("PNG-tEXt");
    assertThat(Shots.open(kept.bytes()).getRGB(1, 1)).isEqualTo(Color.RED.getRGB());
  }

  /** Where the dot that is seen at u, v is stored; by the Exif definition, from memory. */
  private static int[] stored(int orientation, int u, int v, int width, int height) {
    return switch (orientation) {
      case 2 -> new int[] {width - 1 - u, v};
      case 3 -> new int[] {width - 1 - u, height - 1 - v};
      case 4 -> new int[] {u, height - 1 - v};
      case 5 -> new int[] {v, u};
      case 6 -> new int[] {v, height - 1 - u};
      case 7 -> new int[] {width - 1 - v, height - 1 - u};
      case 8 -> new int[] {width - 1 - v, u};
      default -> new int[] {u, v};
    };
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9})
  void isTurnedUpright(int orientation) throws Exception {
    BufferedImage seen = Shots.quarters(64, 32, BufferedImage.TYPE_INT_RGB);
    boolean sideways = orientation >= 5 && orientation <= 8;
    BufferedImage camera =
        new BufferedImage(sideways ? 32 : 64, sideways ? 64 : 32, BufferedImage.TYPE_INT_RGB);
    for (int u = 0; u < 64; u++) {
      for (int v = 0; v < 32; v++) {
        int[] at = stored(orientation, u, v, camera.getWidth(), camera.getHeight());
        camera.setRGB(at[0], at[1], seen.getRGB(u, v));
      }
    }

    BufferedImage kept =
        Shots.open(made(Shots.tagged(camera, orientation), PictureType.JPEG).bytes());

    assertThat(List.of(kept.getWidth(), kept.getHeight())).containsExactly(64, 32);
    for (int[] at : new int[][] {{8, 8}, {56, 8}, {8, 24}, {56, 24}}) {
      assertAlike(new Color(kept.getRGB(at[0], at[1])), new Color(seen.getRGB(at[0], at[1])));
    }
  }

  private static void assertAlike(Color is, Color wanted) {
    assertThat(is.getRed()).isCloseTo(wanted.getRed(), within(12));
    assertThat(is.getGreen()).isCloseTo(wanted.getGreen(), within(12));
    assertThat(is.getBlue()).isCloseTo(wanted.getBlue(), within(12));
  }

  @Test
  void coloursAreThoseThatTheFileMeans() throws Exception {
    BufferedImage grey = new BufferedImage(16, 16, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = grey.createGraphics();
    graphics.setColor(new Color(128, 128, 128));
    graphics.fillRect(0, 0, 16, 16);
    graphics.dispose();
    byte[] profile = ICC_Profile.getInstance(ColorSpace.CS_LINEAR_RGB).getData();
    byte[] named =
        Shots.joined(
            new byte[] {'I', 'C', 'C', '_', 'P', 'R', 'O', 'F', 'I', 'L', 'E', 0, 1, 1}, profile);
    byte[] sent = Shots.withSegment(Shots.file(grey, "jpeg"), 0xe2, named);

    BufferedImage kept = Shots.open(made(sent, PictureType.JPEG).bytes());

    // Half of the light is 188 of 255 by the curve of sRGB, from memory.
    assertAlike(new Color(kept.getRGB(8, 8)), new Color(188, 188, 188));
  }

  @ParameterizedTest
  @ValueSource(
      ints = {
        BufferedImage.TYPE_INT_ARGB,
        BufferedImage.TYPE_3BYTE_BGR,
        BufferedImage.TYPE_BYTE_GRAY,
        BufferedImage.TYPE_USHORT_GRAY,
        BufferedImage.TYPE_BYTE_BINARY,
        BufferedImage.TYPE_BYTE_INDEXED
      })
  void allKindsOfDotsAreTaken(int type) throws Exception {
    byte[] sent = Shots.file(Shots.quarters(16, 16, type), "png");
    BufferedImage kept = Shots.open(made(sent, PictureType.PNG).bytes());
    assertThat(new Color(kept.getRGB(12, 12))).isEqualTo(Color.WHITE);
    assertThat(kept.getColorModel().getNumColorComponents()).isEqualTo(3);
  }

  @Test
  void whatIsClearStaysClear() throws Exception {
    BufferedImage image = new BufferedImage(16, 16, BufferedImage.TYPE_INT_ARGB);
    image.setRGB(3, 3, Color.RED.getRGB());
    Photograph kept = made(Shots.file(image, "png"), PictureType.PNG);
    assertThat(Shots.open(kept.bytes()).getRGB(0, 0) >>> 24).isZero();
    assertThat(Shots.open(kept.bytes()).getRGB(3, 3)).isEqualTo(Color.RED.getRGB());
  }

  @Test
  void oneWithoutLossBecomesOneWithWhereItWouldTakeTooMuch() throws Exception {
    BufferedImage image = new BufferedImage(64, 64, BufferedImage.TYPE_INT_ARGB);
    Photograph kept = Photograph.of(Shots.file(image, "png"), PictureType.PNG, 10);
    assertThat(kept.type()).isEqualTo(PictureType.JPEG);
    assertAlike(new Color(Shots.open(kept.bytes()).getRGB(5, 5)), Color.WHITE);
  }

  @Test
  void aWebpBecomesWhatEveryProgramOpens() throws Exception {
    Photograph kept = made(WEBP, PictureType.WEBP);
    assertThat(kept.type()).isIn(PictureType.PNG, PictureType.JPEG);
    assertThat(PictureType.of(kept.bytes())).isEqualTo(kept.type());
  }

  @Test
  void aLongSideIsShortened() throws Exception {
    BufferedImage image = Shots.quarters(9000, 90, BufferedImage.TYPE_BYTE_GRAY);
    BufferedImage kept = Shots.open(made(Shots.file(image, "png"), PictureType.PNG).bytes());
    assertThat(kept.getWidth()).isEqualTo(Photograph.LONGEST_SIDE);
    assertThat(kept.getHeight()).isEqualTo(41);
  }

  @Test
  void fewBytesThatClaimAVastPictureAreRefused() {
    byte[] png = Shots.file(Shots.quarters(8, 8, BufferedImage.TYPE_INT_RGB), "png");
    assertThat(refusal(Shots.claiming(png, 60_000, 60_000), PictureType.PNG))
        .isEqualTo("picture-too-large");
  }

  @Test
  void aPictureThatIsSentInThousandsOfPassesIsRefused() {
    byte[] jpeg = Shots.withPlace(1);
    byte[] scan = {(byte) 0xff, (byte) 0xda, 0, 8, 1, 1, 0, 0, 63, 0};
    byte[] scans = new byte[scan.length * 1000];
    for (int i = 0; i < scans.length; i++) {
      scans[i] = scan[i % scan.length];
    }
    assertThat(refusal(Shots.joined(jpeg, scans), PictureType.JPEG)).isEqualTo("broken-picture");
  }

  @Test
  void halfAPictureIsRefused() {
    byte[] png = Shots.file(Shots.quarters(64, 64, BufferedImage.TYPE_INT_RGB), "png");
    assertThat(refusal(Arrays.copyOf(png, png.length / 2), PictureType.PNG))
        .isEqualTo("broken-picture");
    assertThat(refusal(Arrays.copyOf(Shots.withPlace(1), 300), PictureType.JPEG))
        .isEqualTo("broken-picture");
    assertThat(refusal(Arrays.copyOf(WEBP, 22), PictureType.WEBP)).isEqualTo("broken-picture");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "%PDF-1.7\n1 0 obj<</S/JavaScript/JS(app.alert(1))>>endobj",
        "PK\u0003\u0004META-INF/MANIFEST.MF PK\u0005\u0006",
        "<!DOCTYPE html><script>alert(1)</script>",
        "GIF89a=1;alert(1)",
      })
  void whatHangsOnAPictureIsNotKept(String foreign) throws Exception {
    byte[] hidden = foreign.getBytes(StandardCharsets.ISO_8859_1);
    byte[] inside = Shots.withSegment(Shots.withPlace(1), 0xfe, hidden);
    byte[] png = Shots.file(Shots.quarters(8, 8, BufferedImage.TYPE_INT_RGB), "png");

    assertThat(kept(Shots.joined(inside, hidden), PictureType.JPEG)).doesNotContain(foreign);
    assertThat(kept(Shots.joined(png, hidden), PictureType.PNG)).doesNotContain(foreign);
  }

  private static String kept(byte[] sent, PictureType type) throws NotTaken {
    return new String(made(sent, type).bytes(), StandardCharsets.ISO_8859_1);
  }
}
