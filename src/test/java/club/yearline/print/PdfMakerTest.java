package club.yearline.print;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PdfMakerTest {

  private static final byte[] DRAWING =
      ("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 8 8\" width=\"8\" height=\"8\">"
              + "<path d=\"M0 0h8v8z\"/></svg>")
          .getBytes(StandardCharsets.UTF_8);

  private final PdfMaker maker = new PdfMaker();

  @Test
  void embedsEachTypeFaceThatAPageUses() throws IOException {
    try (PDDocument pdf = make("<h1>LA-2B – “one”</h1><p>Plain <b>bold</b> 1966</p>")) {
      List<PDFont> fonts = fonts(pdf);
      assertThat(fonts).hasSizeGreaterThanOrEqualTo(3).allMatch(PDFont::isEmbedded);
      assertThat(fonts).allMatch(f -> f.getName().contains("Liberation"));
      assertThat(text(pdf)).contains("LA-2B – “one”", "Plain bold 1966");
    }
  }

  @Test
  void isTaggedAndNamesItsLanguageAndTitle() throws IOException {
    try (PDDocument pdf = make("<h1>Head</h1><ul><li>One</li></ul>")) {
      assertThat(pdf.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
      assertThat(pdf.getDocumentCatalog().getStructureTreeRoot().getKids()).isNotEmpty();
      assertThat(pdf.getDocumentCatalog().getLanguage()).isEqualTo("en");
      assertThat(pdf.getDocumentInformation().getTitle()).isEqualTo("Title");
    }
  }

  @Test
  void isOfThePaperAskedFor() throws IOException {
    assertThat(sheet(Paper.A4).getWidth()).isCloseTo(PDRectangle.A4.getWidth(), within());
    assertThat(sheet(Paper.A4).getHeight()).isCloseTo(PDRectangle.A4.getHeight(), within());
    assertThat(sheet(Paper.LETTER).getWidth()).isCloseTo(PDRectangle.LETTER.getWidth(), within());
    assertThat(sheet(Paper.LETTER).getHeight()).isCloseTo(PDRectangle.LETTER.getHeight(), within());
  }

  @Test
  void showsThePicturesHandedOverAndLeavesOutOthers() throws IOException {
    List<String> asked = new ArrayList<>();
    byte[] pdf =
        maker.make(
            page("<img alt='a' src='picture:a%20b.svg'><img alt='b' src='picture:none.png'>"),
            Paper.A4,
            name -> {
              asked.add(name);
              return name.equals("a b.svg") ? Optional.of(DRAWING) : Optional.empty();
            });
    assertThat(asked).contains("a b.svg", "none.png");
    try (PDDocument read = Loader.loadPDF(pdf)) {
      assertThat(read.getNumberOfPages()).isEqualTo(1);
      assertThat(read.getPage(0).getResources().getXObjectNames()).isNotEmpty();
    }
  }

  @Test
  void fetchesNothingWhateverAPageRefersTo(@TempDir Path folder) throws IOException {
    AtomicInteger calls = new AtomicInteger();
    HttpServer server =
        HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.createContext(
        "/",
        exchange -> {
          calls.incrementAndGet();
          exchange.sendResponseHeaders(404, -1);
          exchange.close();
        });
    server.start();
    Path secret = Files.writeString(folder.resolve("secret.svg"), secretDrawing());
    try {
      String at = "http://localhost:" + server.getAddress().getPort() + "/";
      byte[] pdf = maker.make(hostile(at, secret.toUri().toString()), Paper.A4, drawing(at));
      try (PDDocument read = Loader.loadPDF(pdf)) {
        assertThat(text(read)).contains("Still here").doesNotContain("SECRET");
      }
    } finally {
      server.stop(0);
    }
    assertThat(calls).hasValue(0);
  }

  private static String hostile(String at, String file) {
    return "<html lang='en'><head><title>T</title><base href='%1$s'>".formatted(at)
        + "<link rel='stylesheet' href='%1$sa.css'><style>@import '%1$sb.css';".formatted(at)
        + "body{background:url(%1$sc.png)}</style></head><body>".formatted(at)
        + "<img alt='' src='%1$sd.png'><img alt='' src='%2$s'>".formatted(at, file)
        + "<img alt='' src='picture:out.svg'><p style='background:url(%1$se.png)'>".formatted(at)
        + "<object data='%1$sf.svg' type='image/svg+xml'></object>".formatted(at)
        + "<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'>"
        + "<image href='%1$sg.png' width='9' height='9'/></svg>".formatted(at)
        + "<a href='%1$s'>Still here</a></p></body></html>".formatted(at);
  }

  private static Pictures drawing(String at) {
    String drawing =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\""
            + " width=\"9\" height=\"9\"><image xlink:href=\""
            + at
            + "h.png\" width=\"9\" height=\"9\"/></svg>";
    return name -> Optional.of(drawing.getBytes(StandardCharsets.UTF_8));
  }

  private static String secretDrawing() {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"90\" height=\"20\">"
        + "<text y=\"10\">SECRET</text></svg>";
  }

  private PDRectangle sheet(Paper paper) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(maker.make(page("<p>x</p>"), paper, Pictures.NONE))) {
      return pdf.getPage(0).getMediaBox();
    }
  }

  private static Offset<Float> within() {
    return Offset.offset(1f);
  }

  private PDDocument make(String body) throws IOException {
    return Loader.loadPDF(maker.make(page(body), Paper.A4, Pictures.NONE));
  }

  private static String page(String body) {
    return "<!DOCTYPE html><html lang='en'><head><title>Title</title></head><body>"
        + body
        + "</body></html>";
  }

  private static String text(PDDocument pdf) throws IOException {
    PDFTextStripper reader = new PDFTextStripper();
    reader.setSortByPosition(true);
    return reader.getText(pdf);
  }

  private static List<PDFont> fonts(PDDocument pdf) throws IOException {
    List<PDFont> fonts = new ArrayList<>();
    for (PDPage page : pdf.getPages()) {
      for (COSName name : page.getResources().getFontNames()) {
        fonts.add(page.getResources().getFont(name));
      }
    }
    return fonts;
  }
}
