package club.yearline.uploads;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;

/** PDF documents for tests, made by a library that knows them. */
public final class Documents {

  private Documents() {}

  private interface Writing {
    void write(PDDocument document, ByteArrayOutputStream out) throws IOException;
  }

  /** A document with its table of contents as text, or packed, as newer ones have it. */
  public static byte[] plain(boolean packed) {
    return made(
        (document, out) ->
            document.save(
                out,
                packed
                    ? CompressParameters.DEFAULT_COMPRESSION
                    : CompressParameters.NO_COMPRESSION));
  }

  /** A document saved a second time onto its end. */
  static byte[] savedTwice() {
    byte[] once = plain(false);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (PDDocument document = Loader.loadPDF(once)) {
      document.getDocumentInformation().setTitle("Again");
      document.getDocumentInformation().getCOSObject().setNeedToBeUpdated(true);
      document.saveIncremental(out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /** A document that opens without a password, but is locked against changes. */
  static byte[] locked(boolean packed) {
    return made(
        (document, out) -> {
          document.protect(new StandardProtectionPolicy("owner", "", new AccessPermission()));
          document.save(
              out,
              packed ? CompressParameters.DEFAULT_COMPRESSION : CompressParameters.NO_COMPRESSION);
        });
  }

  private static byte[] made(Writing writing) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (PDDocument document = new PDDocument()) {
      document.addPage(new PDPage());
      writing.write(document, out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }
}
