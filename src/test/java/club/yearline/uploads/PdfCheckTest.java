package club.yearline.uploads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Documents are followed from their end as readers do. */
class PdfCheckTest {

  private static final String ROOT = "<</Size 1/Root 1 0 R>>";

  static Stream<byte[]> sound() {
    return Stream.of(Documents.plain(false), Documents.plain(true), Documents.savedTwice());
  }

  private static String refusal(byte[] bytes) {
    NotTaken refused = catchThrowableOfType(NotTaken.class, () -> new PdfCheck(bytes).check());
    assertThat(refused).isNotNull();
    return refused.code();
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }

  /** The smallest that is followed: a table of contents with this dictionary. */
  private static byte[] ending(String dictionary) {
    return bytes("%PDF-1.4\nxref\n0 0\ntrailer\n" + dictionary + "\nstartxref\n9\n%%EOF\n");
  }

  @ParameterizedTest
  @MethodSource("sound")
  void aSoundDocumentIsTaken(byte[] document) {
    assertThat(PdfCheck.looksLike(document)).isTrue();
    assertThatCode(() -> new PdfCheck(document).check()).doesNotThrowAnyException();
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void aLockedDocumentIsRefused(boolean packed) {
    assertThat(refusal(Documents.locked(packed))).isEqualTo("locked-document");
  }

  @ParameterizedTest
  @MethodSource("sound")
  void halfADocumentIsRefused(byte[] document) {
    assertThat(refusal(Arrays.copyOf(document, document.length / 2))).isEqualTo("broken-document");
  }

  @ParameterizedTest
  @MethodSource("sound")
  void whateverHangsOnADocumentIsRefused(byte[] document) {
    byte[] html = bytes("<script>alert(1)</script>");
    assertThat(refusal(Shots.joined(document, html))).isEqualTo("broken-document");
    byte[] zip = bytes("PK\005\006 startxref\n9\n%%EOF");
    assertThat(refusal(Shots.joined(document, zip))).isEqualTo("broken-document");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<</Size 1/Root 1 0 R/Encrypt 4 0 R>>",
        "<</Size 1 /Root 1 0 R /#45ncrypt <</Filter/Standard>> >>",
        "<</ID(a \\) (b) c)/Root 1 0 R/Encrypt 4 0 R>>",
        "<</ID<aabb>/Root 1 0 R % a comment >>\n/Encrypt 4 0 R>>"
      })
  void aLockIsSeenHoweverItIsWritten(String dictionary) {
    assertThat(refusal(ending(dictionary))).isEqualTo("locked-document");
  }

  @Test
  void aLockOfWhatIsNestedLocksNothing() {
    String nested = "<</Root 1 0 R/Info<</Encrypt 1>>/Note(/Encrypt 1)>>";
    assertThatCode(() -> new PdfCheck(ending(nested)).check()).doesNotThrowAnyException();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<</Size 1>>",
        "<</Root 1 0 R",
        "<</Root 1 0 R/Prev 99999999>>",
        "Root",
        "<</N(/Root 1 >>",
        "<</Root 1 0 R/N<aa>"
      })
  void aDocumentThatLeadsNowhereIsRefused(String dictionary) {
    assertThat(refusal(ending(dictionary))).isEqualTo("broken-document");
  }

  @Test
  void aDocumentThatLeadsInCirclesIsReadOnce() {
    byte[] circle = ending(ROOT.replace(">>", "/Prev 9>>"));
    assertThatCode(() -> new PdfCheck(circle).check()).doesNotThrowAnyException();
  }

  @ParameterizedTest
  @ValueSource(strings = {"%PDF-1.7", "%PDF-1.7\n%%EOF", "%PDF-1.7\nstartxref\n9999999999\n%%EOF"})
  void aFirstLineMakesNoDocument(String text) {
    assertThat(PdfCheck.looksLike(bytes(text))).isTrue();
    assertThat(refusal(bytes(text))).isEqualTo("broken-document");
  }
}
