package club.yearline.inspection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;

import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.accounts.WholeApplication;
import club.yearline.catalog.Edition;
import club.yearline.catalog.Publication;
import club.yearline.catalog.Snapshots;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Entry;
import club.yearline.testing.Sample;
import club.yearline.testing.SignedIn;
import club.yearline.uploads.Shots;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.context.TestPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockMultipartHttpServletRequestBuilder;

/** The report of a saved inspection, with its photographs. */
@WholeApplication
@TestPropertySource(properties = "start.of=saved-report")
class SavedReportTest {

  @Autowired private ApplicationContext context;
  @Autowired private MockMvc mvc;
  @Autowired private Snapshots snapshots;
  @Autowired private Publication publication;

  private Actor member;

  @BeforeEach
  void publish() {
    member = SignedIn.person(context, "Petra Photographs", Role.MEMBER);
    if (snapshots.head().number() == 0) {
      publication.publish(Edition.of("Published", "Å", entries()));
    }
  }

  private static List<Entry> entries() {
    return Sample.with(
        Sample.turnstone(),
        Sample.choice("fin", "straight", "swept"),
        Sample.change("fin-at-start", "fin", "straight", CutIn.atStart("la-2b")));
  }

  @Test
  void withoutPhotographsItIsOneSheet() throws Exception {
    try (PDDocument pdf = pdf(save(0), "bare")) {
      assertThat(pdf.getNumberOfPages()).isEqualTo(1);
      assertThat(pictures(pdf)).isZero();
      assertThat(new PDFTextStripper().getText(pdf)).contains("LT-0042").doesNotContain("Photogr");
    }
  }

  @Test
  void itShowsTheFirstSixPhotographsSmallOnTwoSheetsAtMost() throws Exception {
    try (PDDocument pdf = pdf(save(8), "photographs")) {
      assertThat(pdf.getNumberOfPages()).isLessThanOrEqualTo(2);
      assertThat(pictures(pdf)).isEqualTo(6);
      assertThat(new PDFTextStripper().getText(pdf)).contains("Photographs", "Feature door-latch:");
    }
  }

  @Test
  void itIsNobodyElses() throws Exception {
    UUID id = save(1);
    Actor other = SignedIn.person(context, "Odd Other", Role.KEEPER);
    assertThat(fetch(other, id).getStatus()).isEqualTo(404);
    assertThat(fetch(member, UUID.randomUUID()).getStatus()).isEqualTo(404);
  }

  private UUID save(int photographs) throws Exception {
    UUID id = UUID.randomUUID();
    MockMultipartHttpServletRequestBuilder form = multipart("/inspect/saved/" + id);
    for (int i = 0; i < photographs; i++) {
      // Each another picture: the same one twice is kept once.
      BufferedImage shot = Shots.quarters(900 + i * 8, 700, BufferedImage.TYPE_INT_RGB);
      form.file(
          new MockMultipartFile(
              i % 2 == 0 ? "photo.door-latch" : "photo.fin",
              i + ".jpg",
              "image/jpeg",
              Shots.file(shot, "jpg")));
    }
    form.param("serial", "LT-0042").param("o.door-latch", "rotary").param("o.fin", "straight");
    MockHttpServletResponse answer =
        mvc.perform(form.with(SignedIn.as(member)).with(csrf())).andReturn().getResponse();
    assertThat(answer.getRedirectedUrl()).isEqualTo("/inspect/saved/" + id);
    return id;
  }

  private MockHttpServletResponse fetch(Actor actor, UUID id) throws Exception {
    return mvc.perform(get("/inspect/saved/" + id + "/report.pdf").with(SignedIn.as(actor)))
        .andReturn()
        .getResponse();
  }

  private PDDocument pdf(UUID id, String name) throws Exception {
    MockHttpServletResponse answer = fetch(member, id);
    assertThat(answer.getStatus()).isEqualTo(200);
    assertThat(answer.getContentType()).isEqualTo("application/pdf");
    if (Boolean.getBoolean("yearline.pictures")) {
      Files.createDirectories(Path.of("target/screenshots"));
      Path file = Path.of("target/screenshots/saved-report-" + name + ".pdf");
      Files.write(file, answer.getContentAsByteArray());
    }
    return Loader.loadPDF(answer.getContentAsByteArray());
  }

  private static int pictures(PDDocument pdf) throws Exception {
    int count = 0;
    for (PDPage page : pdf.getPages()) {
      for (COSName name : page.getResources().getXObjectNames()) {
        if (page.getResources().getXObject(name) instanceof PDImageXObject image) {
          assertThat(Math.max(image.getWidth(), image.getHeight())).isLessThanOrEqualTo(320);
          count++;
        }
      }
    }
    return count;
  }
}
