package club.yearline.uploads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures are judged by content. */
class PictureTypeTest {

  /** A lossless picture of one dot; bytes from memory, and what a decoder takes. */
  private static final String WEBP = "UklGRhoAAABXRUJQVlA4TA0AAAAvAAAAEAcQERGIiP4HAA==";

  private static byte[] raster(String format) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB), format, out);
    return out.toByteArray();
  }

  private static byte[] svg(String inside) {
    return ("<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\">"
            + inside
            + "</svg>")
        .getBytes(StandardCharsets.UTF_8);
  }

  private static String complaint(byte[] bytes) {
    NotTaken refused = catchThrowableOfType(NotTaken.class, () -> PictureType.of(bytes));
    assertThat(refused).isNotNull();
    return refused.code();
  }

  @Test
  void picturesOfDotsAreDecoded() throws Exception {
    assertThat(PictureType.of(raster("png"))).isEqualTo(PictureType.PNG);
    assertThat(PictureType.of(raster("jpeg"))).isEqualTo(PictureType.JPEG);
    assertThat(PictureType.of(Base64.getDecoder().decode(WEBP))).isEqualTo(PictureType.WEBP);
  }

  @Test
  void aBrokenPictureIsRefused() throws IOException {
    byte[] png = raster("png");
    assertThat(complaint(Arrays.copyOf(png, png.length / 2))).isEqualTo("broken-picture");
    assertThat(complaint(Arrays.copyOf(raster("jpeg"), 30))).isEqualTo("broken-picture");
    assertThat(complaint(Arrays.copyOf(Base64.getDecoder().decode(WEBP), 22)))
        .isEqualTo("broken-picture");
  }

  @Test
  void aFewBytesThatClaimAVastPictureAreRefused() throws IOException {
    byte[] png = raster("png");
    // Width and height stand in the header chunk; its checksum is corrected with them.
    ByteBuffer header = ByteBuffer.wrap(png);
    header.putInt(16, 60_000).putInt(20, 60_000);
    CRC32 sum = new CRC32();
    sum.update(png, 12, 17);
    header.putInt(29, (int) sum.getValue());
    assertThat(complaint(png)).isEqualTo("picture-too-large");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "GIF89a", "just text", "%PDF-1.7", "<html><body/></html>", "<a/>"})
  void whatIsNoPictureIsRefused(String content) {
    assertThat(complaint(content.getBytes(StandardCharsets.UTF_8))).isEqualTo("not-a-picture");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<path d='M0 0h8v8z' fill='url(#g)' style='stroke:#000'/>",
        "<defs><linearGradient id='g'><stop offset='0'/></linearGradient></defs>",
        "<style>path { fill: none }</style><use xlink:href='#a'/><use href='#b'/>",
        "<title xml:lang='en'>A &amp; B</title><!-- drawn by hand --><g aria-label='x'/>",
        "<text x='1' y='2'><tspan>Fin</tspan></text>"
      })
  void aDrawingThatOnlyDrawsIsTaken(String inside) throws NotTaken {
    assertThat(PictureType.of(svg(inside))).isEqualTo(PictureType.SVG);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "<path onclick='alert(1)' d=''/>",
        "<foreignObject/>",
        "<image href='https://example.org/x.png'/>",
        "<image href='data:image/png;base64,AAAA'/>",
        "<use href='https://example.org/x.svg#a'/>",
        "<use xlink:href='other.svg#a'/>",
        "<a href='#x'/>",
        "<path fill='url(https://example.org/x)'/>",
        "<path style='fill:url(https://example.org/x)'/>",
        "<path style='fill:u\\72l(//example.org)'/>",
        "<style>@import 'https://example.org/x.css';</style>",
        "<style><![CDATA[path{fill:url(//example.org/x)}]]></style>",
        "<animate attributeName='href' to='javascript:alert(1)'/>",
        "<set attributeName='onload' to='alert(1)'/>",
        "<x:script xmlns:x='http://www.w3.org/1999/xhtml'>1</x:script>",
        "<g xml:base='https://example.org/'/>",
        "<?xml-stylesheet href='https://example.org/x.css'?>"
      })
  void aDrawingThatDoesMoreIsRefused(String inside) {
    assertThat(complaint(svg(inside))).isEqualTo("unsafe-drawing");
  }

  @Test
  void documentTypesAndEntitiesAreRefused(@TempDir Path folder) throws IOException {
    Path secret = Files.writeString(folder.resolve("secret"), "secret");
    String external =
        "<!DOCTYPE svg [<!ENTITY x SYSTEM '"
            + secret.toUri()
            + "'>]>"
            + new String(svg("<title>&x;</title>"), StandardCharsets.UTF_8);
    assertThat(complaint(external.getBytes(StandardCharsets.UTF_8))).isEqualTo("unsafe-drawing");
    String plain = "<!DOCTYPE svg>" + new String(svg(""), StandardCharsets.UTF_8);
    assertThat(complaint(plain.getBytes(StandardCharsets.UTF_8))).isEqualTo("unsafe-drawing");
  }

  @Test
  void aDrawingThatDoesNotEndIsRefused() {
    byte[] whole = svg("<g/>");
    assertThat(complaint(Arrays.copyOf(whole, whole.length - 5))).isEqualTo("broken-picture");
  }
}
