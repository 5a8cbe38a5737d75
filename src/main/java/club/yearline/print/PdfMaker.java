package club.yearline.print;

import club.yearline.web.Refusal;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.jsoup.Jsoup;
import org.jsoup.helper.W3CDom;
import org.jsoup.nodes.Document;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;

/**
 * Makes PDFs of pages of ours: tagged, with type faces embedded. A page names a language and a
 * title; it is styled by {@code /print/paper.css} and by no other sheet. Nothing is fetched,
 * whatever the page refers to: pictures are those handed over.
 */
@Component
public class PdfMaker {

  private static final Logger log = LoggerFactory.getLogger(PdfMaker.class);

  private static final int PATIENCE_SECONDS = 20;
  private static final int NORMAL = 400;
  private static final int BOLD = 700;

  static {
    // What the library has to say is told by the consumer below, in our own log.
    XRLog.setLoggingEnabled(false);
  }

  private final String style = new String(bytes("/print/paper.css"), StandardCharsets.UTF_8);

  /** A page takes much memory while it is laid out. */
  private final Semaphore turns =
      new Semaphore(Math.max(1, Runtime.getRuntime().availableProcessors() / 2), true);

  /**
   * Makes a PDF.
   *
   * @param html a whole page of ours
   * @throws Refusal if too many are being made
   */
  public byte[] make(String html, Paper paper, Pictures pictures) {
    takeTurn();
    try {
      return laidOut(document(html, paper), pictures);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      turns.release();
    }
  }

  private void takeTurn() {
    try {
      if (turns.tryAcquire(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        return;
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    throw Refusal.of(HttpStatus.SERVICE_UNAVAILABLE, "busy");
  }

  private Document document(String html, Paper paper) {
    Document page = Jsoup.parse(html);
    page.select("script, link, style, iframe, object, embed, base").remove();
    page.head().appendElement("style").text("@page { size: " + paper.size() + "; }\n" + style);
    return page;
  }

  private static byte[] laidOut(Document page, Pictures pictures) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.withW3cDocument(new W3CDom().fromJsoup(page), PictureStreams.BASE);
    builder.useUriResolver((base, uri) -> PictureStreams.isPicture(uri) ? uri : null);
    builder.useExternalResourceAccessControl(
        (uri, type) -> PictureStreams.isPicture(uri),
        ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI);
    builder.useProtocolsStreamImplementation(
        new PictureStreams(pictures), PictureStreams.SCHEME, "http", "https", "file", "jar", "ftp");
    builder.withDiagnosticConsumer(d -> log.debug("{}", d.getFormattedMessage()));
    builder.withProducer("Yearline");
    builder.usePdfUaAccessibility(true);
    builder.toStream(out);
    addFaces(builder);
    try (BatikSVGDrawer drawings = new BatikSVGDrawer()) {
      builder.useSVGDrawer(drawings);
      builder.run();
    }
    return out.toByteArray();
  }

  private static void addFaces(PdfRendererBuilder builder) {
    addFace(builder, "Sans-Regular", "Sheet", NORMAL);
    addFace(builder, "Sans-Bold", "Sheet", BOLD);
    addFace(builder, "Mono-Regular", "Stamp", NORMAL);
    addFace(builder, "Mono-Bold", "Stamp", BOLD);
  }

  private static void addFace(PdfRendererBuilder builder, String file, String family, int weight) {
    String path = "/liberation/Liberation" + file + ".ttf";
    builder.useFont(() -> stream(path), family, weight, FontStyle.NORMAL, true);
  }

  private static byte[] bytes(String path) {
    try (InputStream in = stream(path)) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static InputStream stream(String path) {
    return Objects.requireNonNull(PdfMaker.class.getResourceAsStream(path), path);
  }
}
