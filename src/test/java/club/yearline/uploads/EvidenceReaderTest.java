package club.yearline.uploads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Evidence is judged by content, never by name. */
class EvidenceReaderTest {

  private static String refusal(byte[] bytes) {
    NotTaken refused =
        catchThrowableOfType(NotTaken.class, () -> EvidenceReader.read("x.jpg", bytes));
    assertThat(refused).isNotNull();
    return refused.code();
  }

  @Test
  void contentDecidesWhateverTheNameSays() throws NotTaken {
    Evidence photograph = EvidenceReader.read("latch.pdf", Shots.withPlace(1));
    assertThat(photograph.mediaType()).isEqualTo("image/jpeg");
    assertThat(photograph.name()).isEqualTo("latch.jpg");
    byte[] png = Shots.file(Shots.quarters(8, 8, BufferedImage.TYPE_INT_RGB), "png");
    assertThat(EvidenceReader.read("latch.html", png).name()).isEqualTo("latch.png");
    Evidence document = EvidenceReader.read("bulletin.exe", Documents.plain(true));
    assertThat(document.mediaType()).isEqualTo("application/pdf");
    assertThat(document.name()).isEqualTo("bulletin.pdf");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "GIF89a",
        "just text",
        "<html><script>alert(1)</script></html>",
        "<svg xmlns='http://www.w3.org/2000/svg'><script>alert(1)</script></svg>",
        "<svg xmlns='http://www.w3.org/2000/svg'/>",
        "PK\u0003\u0004",
        " %PDF-1.7"
      })
  void whatIsNeitherPhotographNorDocumentIsRefused(String content) {
    assertThat(refusal(content.getBytes(StandardCharsets.ISO_8859_1))).isEqualTo("not-evidence");
  }

  @Test
  void anEmptyFileIsRefused() {
    assertThat(refusal(new byte[0])).isEqualTo("empty-file");
  }

  @Test
  void oneByteTooManyIsRefused() throws NotTaken {
    byte[] photograph = Shots.withPlace(1);
    int most = 10 * 1024 * 1024;
    assertThat(EvidenceReader.read("x.jpg", Arrays.copyOf(photograph, most)).bytes()).isNotEmpty();
    assertThat(refusal(Arrays.copyOf(photograph, most + 1))).isEqualTo("file-too-large");
  }

  @ParameterizedTest
  @CsvSource({
    "latch.jpeg, latch.jpg",
    "C:\\Users\\Ann\\latch.jpeg, latch.jpg",
    "../../etc/passwd, passwd.jpg",
    "report.pdf.exe, report.pdf.jpg",
    "'a\"; filename=\"b.html', a filename b.jpg",
    "Türgriff vorn (2).JPG, Türgriff vorn (2).jpg",
    ".htaccess, htaccess.jpg",
    "..., file.jpg",
    "'', file.jpg",
    "'a\r\nb\u202egpj.exe', abgpj.jpg"
  })
  void aNameBecomesAPlainOne(String sent, String kept) {
    assertThat(FileName.clean(sent, "jpg")).isEqualTo(kept);
  }

  @Test
  void aNameIsOfBoundedLength() {
    assertThat(FileName.clean("é".repeat(500), "jpg")).hasSize(84);
    assertThat(FileName.clean("\ud83d\ude00".repeat(500), "jpg")).isEqualTo("file.jpg");
    assertThat(FileName.clean("x".repeat(500), "jpg")).hasSize(84);
  }
}
