package club.yearline.groundschool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.anyString;
import static org.mockito.BDDMockito.given;

import club.yearline.accounts.Addresses;
import club.yearline.accounts.SecurityConfiguration;
import club.yearline.browse.Timelines;
import club.yearline.catalog.Chapters;
import club.yearline.catalog.Contributor;
import club.yearline.catalog.Pictures;
import club.yearline.catalog.Revision;
import club.yearline.catalog.Snapshot;
import club.yearline.catalog.Snapshots;
import club.yearline.catalog.StoredPicture;
import club.yearline.catalog.Wording;
import club.yearline.citing.Styles;
import club.yearline.effectivity.Catalogue;
import club.yearline.print.PdfMaker;
import club.yearline.testing.SmallCatalogue;
import club.yearline.web.Phrases;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.UnsupportedEncodingException;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.assertj.core.data.Offset;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.webmvc.test.autoconfigure.WebMvcTest;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.ComponentScan.Filter;
import org.springframework.context.annotation.FilterType;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.bean.override.mockito.MockitoBean;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** Hand-outs and wall charts over the small catalogue at revision 3, of 2 January 1970. */
@WebMvcTest({HandoutController.class, WallChartController.class})
@Import({
  SecurityConfiguration.class,
  HandoutViews.class,
  HandoutPaper.class,
  WallCharts.class,
  Drawings.class,
  PdfMaker.class,
  Styles.class,
  Addresses.class,
  Phrases.class,
  Chapters.class,
  Wording.class
})
@ComponentScan(
    basePackageClasses = Timelines.class,
    useDefaultFilters = false,
    includeFilters =
        @Filter(
            type = FilterType.REGEX,
            pattern = "club\\.yearline\\.browse\\.(Timelines|RecordTexts)"))
class HandoutPagesTest {

  private static final byte[] DRAWING =
      ("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 8 8\" width=\"8\" height=\"8\">"
              + "<path d=\"M0 0h8v8z\"/></svg>")
          .getBytes(StandardCharsets.UTF_8);

  private static final String SCRIPT = SmallCatalogue.SCRIPT;
  private static final String BOTH = "f=landing-light&f=door-latch";

  private static final Snapshot SNAPSHOT =
      new Snapshot(
          new Revision(
              3, Instant.ofEpochSecond(86_400), "note", Contributor.NOBODY, Contributor.NOBODY),
          Catalogue.of(SmallCatalogue.records()));

  @Autowired MockMvcTester web;
  @MockitoBean Snapshots snapshots;
  @MockitoBean Pictures pictures;
  @MockitoBean SavedHandouts saved;

  @BeforeEach
  void publish() {
    given(snapshots.head()).willReturn(SNAPSHOT);
    given(snapshots.at(3)).willReturn(SNAPSHOT);
    given(pictures.find(anyString()))
        .willReturn(Optional.of(new StoredPicture("image/svg+xml", DRAWING)));
  }

  @Test
  void offersVariantsAndFeaturesOfAFamily() {
    Document page = ok("/ground-school");
    assertThat(page.select("[name=f]").eachAttr("value"))
        .containsExactly("landing-light", "door-latch", "power");
    assertThat(page.select("[name=v]").eachAttr("value")).containsExactly("la-2", "la-2a");
    assertThat(page.select(".made, .faults")).isEmpty();
    assertThat(ok("/ground-school?family=whimbrel").select("[name=v]").eachAttr("value"))
        .containsExactly("la-5");
  }

  @Test
  void holdsTheChoiceInTheAddressAndMovesFeatures() {
    Document page = ok("/ground-school?rev=3&title=Latches%20%26%20lights&from=1957&" + BOTH);
    assertThat(page.select("#order li span").eachText())
        .containsExactly("Landing light", "Door latch");
    String up = page.select("#order li a").attr("href");
    assertThat(ok(up).select("#order li span").eachText())
        .containsExactly("Door latch", "Landing light");
    assertThat(page.select("[name=title]").attr("value")).isEqualTo("Latches & lights");
    assertThat(page.select("[name=f][checked]")).hasSize(2);
    assertThat(page.select(".made a.button").eachAttr("href"))
        .allMatch(href -> href.contains("f=landing-light&f=door-latch&from=1957"))
        .allMatch(href -> href.contains("rev=3"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          title=x                                | Choose at least one feature.
          f=none                                 | Revision 3 has no feature “none”.
          f=power&f=beacon                       | Revision 3 has no feature “beacon”.
          f=power&v=none                         | Revision 3 has no variant “none”.
          f=power&from=57                        | “57” is no year
          f=power&from=<script>                  | “<script>” is no year
          f=power&from=1960&to=1957              | The first year lies after the last.
          """)
  void saysWhatIsWrongWithAChoice(String query, String words) {
    for (String path : List.of("/ground-school?", "/ground-school/hand-out?")) {
      MvcTestResult result = get(path + query.replace("<", "%3C").replace(">", "%3E"));
      assertThat(result).hasStatus(422);
      Document page = page(result);
      assertThat(page.select(".faults").text()).contains(words);
      assertThat(page.select("main script, .made")).isEmpty();
    }
  }

  @Test
  void refusesFiveHundredFeaturesAndTextsWithoutEnd() {
    String many =
        IntStream.range(0, 500).mapToObj(i -> "f=feature-" + i).collect(Collectors.joining("&"));
    for (String path : List.of("/ground-school?", "/ground-school/hand-out?")) {
      MvcTestResult result = get(path + many);
      assertThat(result).hasStatus(422);
      assertThat(page(result).select(".faults").text())
          .contains("500 features are chosen; a hand-out takes 24 at most");
    }
    MvcTestResult result = get("/ground-school?f=power&remarks=" + "x".repeat(2001));
    assertThat(result).hasStatus(422);
    assertThat(page(result).select(".faults").text()).contains("2001 characters are too long");
    assertThat(get("/ground-school/hand-out.pdf?f=none")).hasStatus3xxRedirection();
  }

  @Test
  void showsTimelinesValuesChangesAndNumberedSources() {
    Document page = ok("/ground-school/hand-out?rev=3&" + BOTH);
    assertThat(page.select("main section h2").eachText())
        .containsExactly("1. Landing light", "2. Door latch", "Sources", "Where this comes from");
    assertThat(page.select("figure.timeline svg[role=group]")).hasSize(2);
    assertThat(page.select("[id]").eachAttr("id")).doesNotHaveDuplicates();
    assertThat(page.select(".pictures img").eachAttr("alt"))
        .containsExactly("Picture of rotary latch");
    assertThat(page.select("#feature-1 .rows").text()).contains("[1, 2-14]", "[against: 2, p. 12]");
    assertThat(page.select(".notes li").eachText())
        .containsExactly(
            "[1] Lindmark Aero, 1959. LA-MM-2: Turnstone maintenance manual. Maintenance manual.",
            "[2] Lindmark Aero, 1959. High wing over Halvik.");
    assertThat(page.select(".caution").text()).contains("not approved data");
    assertThat(page.select(".plate").text()).contains("Revision 3, published 1970-01-02");
  }

  @Test
  void keepsToVariantsAndYears() {
    Document page = ok("/ground-school/hand-out?rev=3&f=door-latch&v=la-2&from=1957&to=1957");
    assertThat(page.select("main table tbody th").eachText()).containsOnly("LA-2");
    assertThat(page.select("main table td.serial").eachText()).allMatch(t -> t.contains("1957"));
    assertThat(page.select(".plate").text()).contains("LA-2; 1957");
  }

  @Test
  void showsRemarksAsTextWhateverStandsInThem() throws IOException {
    String query =
        "rev=3&f=power&title=" + encoded(SCRIPT) + "&remarks=" + encoded(SCRIPT + "\nTwo");
    Document page = ok("/ground-school/hand-out?" + query);
    assertThat(page.select("main script")).isEmpty();
    assertThat(page.select(".remark").eachText()).containsExactly(SCRIPT, "Two");
    assertThat(page.select("h1").text()).isEqualTo(SCRIPT);
    try (PDDocument pdf = pdf("/ground-school/hand-out.pdf?" + query)) {
      assertThat(text(pdf)).contains(SCRIPT);
    }
  }

  @Test
  void theCodeOnThePageAndOnPaperLeadsToThePermalink() throws Exception {
    String query = BOTH + "&title=Latches%20%26%20lights";
    Document page = ok("/ground-school/hand-out?" + query);
    String address = "http://localhost/ground-school/hand-out?" + query + "&rev=3";
    assertThat(page.select(".address").text()).isEqualTo(address);
    try (PDDocument pdf = pdf("/ground-school/hand-out.pdf?paper=letter&" + query)) {
      assertThat(decoded(pdf)).isEqualTo(address);
      assertThat(text(pdf).replaceAll("\\s", "")).contains(address);
    }
  }

  /** An address full of remarks would make squares that no telephone can tell apart. */
  @Test
  void theCodeLeavesLongRemarksOutAndSaysSo() throws Exception {
    String query = "f=power&remarks=" + "long+".repeat(390);
    try (PDDocument pdf = pdf("/ground-school/hand-out.pdf?" + query)) {
      assertThat(decoded(pdf)).isEqualTo("http://localhost/ground-school/hand-out?f=power&rev=3");
      assertThat(text(pdf)).contains("without the remarks");
    }
  }

  @ParameterizedTest
  @CsvSource({"a4, 595.28, 841.89", "letter, 612, 792"})
  void thePdfIsTaggedHasItsFacesAndIsOfThePaper(String paper, float width, float height)
      throws IOException {
    try (PDDocument pdf = pdf("/ground-school/hand-out.pdf?f=power&paper=" + paper + "&" + BOTH)) {
      PDRectangle sheet = pdf.getPage(0).getMediaBox();
      assertThat(sheet.getWidth()).isCloseTo(width, Offset.offset(1f));
      assertThat(sheet.getHeight()).isCloseTo(height, Offset.offset(1f));
      assertThat(pdf.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
      assertThat(fonts(pdf)).isNotEmpty().allMatch(PDFont::isEmbedded);
      assertThat(text(pdf))
          .contains("Door latch", "Revision 3, published 1970-01-02", "not approved data")
          .contains("[1] Lindmark Aero, 1959. LA-MM-2");
    }
  }

  @Test
  void drawsAFamilyAsOneSheet() throws IOException {
    MvcTestResult svg = get("/ground-school/wall-chart/turnstone/svg?rev=3");
    assertThat(svg)
        .hasStatusOk()
        .hasContentType("image/svg+xml")
        .hasHeader(
            "Content-Security-Policy", "default-src 'none'; style-src 'unsafe-inline'; sandbox");
    Document drawing = Jsoup.parse(body(svg), "", org.jsoup.parser.Parser.xmlParser());
    assertThat(drawing.select(".wall-name").eachText())
        .containsExactly("LA-2, 1956 to 1957", "LA-2A, 1958, 1960");
    assertThat(drawing.select(".wall-run")).hasSize(3);
    assertThat(drawing.select(".wall-words").eachText().stream().map(t -> t.replace('\u00a0', ' ')))
        .contains("Door latch: rotary latch", "Power: 160 hp", "Landing light: in the nose bowl")
        .doesNotContain("Power: 145 hp");
    assertThat(drawing.select(".wall-note").text())
        .contains("Revision 3", "/families/turnstone?rev=3");
    try (PDDocument pdf = pdf("/ground-school/wall-chart/turnstone/pdf?rev=3")) {
      assertThat(pdf.getNumberOfPages()).isEqualTo(1);
      assertThat(pdf.getPage(0).getMediaBox().getWidth())
          .isCloseTo(PDRectangle.A3.getHeight(), Offset.offset(1f));
    }
    assertThat(get("/ground-school/wall-chart/none/svg")).hasStatus(404);
  }

  private PDDocument pdf(String address) throws IOException {
    MvcTestResult result = get(address);
    assertThat(result).hasStatusOk().hasContentType("application/pdf");
    return Loader.loadPDF(result.getResponse().getContentAsByteArray());
  }

  private static String text(PDDocument pdf) throws IOException {
    return new PDFTextStripper().getText(pdf);
  }

  private static List<PDFont> fonts(PDDocument pdf) throws IOException {
    List<PDFont> fonts = new ArrayList<>();
    for (PDPage page : pdf.getPages()) {
      PDResources resources = page.getResources();
      for (COSName name : resources.getFontNames()) {
        fonts.add(resources.getFont(name));
      }
    }
    return fonts;
  }

  /** What a decoder reads off the last sheet, as printed. */
  private static String decoded(PDDocument pdf) throws IOException, ReaderException {
    BufferedImage sheet = new PDFRenderer(pdf).renderImageWithDPI(pdf.getNumberOfPages() - 1, 200);
    int[] dots = sheet.getRGB(0, 0, sheet.getWidth(), sheet.getHeight(), null, 0, sheet.getWidth());
    RGBLuminanceSource light = new RGBLuminanceSource(sheet.getWidth(), sheet.getHeight(), dots);
    return new QRCodeReader()
        .decode(
            new BinaryBitmap(new HybridBinarizer(light)),
            Map.of(DecodeHintType.TRY_HARDER, Boolean.TRUE))
        .getText();
  }

  private MvcTestResult get(String address) {
    return web.get().uri(URI.create(address)).exchange();
  }

  private Document ok(String address) {
    MvcTestResult result = get(address);
    assertThat(result).hasStatusOk();
    return page(result);
  }

  private static Document page(MvcTestResult result) {
    return Jsoup.parse(body(result), "");
  }

  private static String body(MvcTestResult result) {
    try {
      return result.getResponse().getContentAsString(StandardCharsets.UTF_8);
    } catch (UnsupportedEncodingException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
