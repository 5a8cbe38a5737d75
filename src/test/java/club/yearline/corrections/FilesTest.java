package club.yearline.corrections;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.accounts.WholeApplication;
import club.yearline.catalog.EntryRef;
import club.yearline.effectivity.EntryKind;
import club.yearline.tables.Sheet;
import club.yearline.testing.Sample;
import club.yearline.testing.SignedIn;
import club.yearline.uploads.Documents;
import club.yearline.uploads.Shots;
import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.exif.GpsDirectory;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockMultipartHttpServletRequestBuilder;

/** What members attach to corrections, and what becomes of it. */
@WholeApplication
class FilesTest {

  @Autowired ApplicationContext context;
  @Autowired MockMvc mvc;
  @Autowired Drafting drafting;
  @Autowired CorrectionReading reading;
  @Autowired Attaching attaching;

  private Actor author;
  private Actor other;
  private Actor moderator;
  private long id;

  @BeforeEach
  void aDraft() {
    author = SignedIn.person(context, "Mette Member", Role.MEMBER);
    other = SignedIn.person(context, "Odd Other", Role.MEMBER);
    moderator = SignedIn.person(context, "Mona Moderator", Role.MODERATOR);
    EntryRef ref = new EntryRef(EntryKind.SOURCE, "bulletin-" + UUID.randomUUID());
    Sheet sheet = Sheet.of(Sample.source(ref.key())).with("sources", List.of(source(ref.key())));
    id =
        drafting
            .begin(author, "A bulletin", new Proposal(ref, sheet, 0), UUID.randomUUID().toString())
            .id();
  }

  private static Map<String, String> source(String key) {
    return Map.of("key", key, "kind", "book", "title", "Bulletin");
  }

  private static MockMultipartFile file(String name, byte[] bytes) {
    return new MockMultipartFile("files", name, "application/octet-stream", bytes);
  }

  private static byte[] photograph(int width) {
    return Shots.file(Shots.quarters(width, 8, BufferedImage.TYPE_INT_RGB), "png");
  }

  private MockHttpServletResponse send(Actor actor, MockMultipartFile... files) throws Exception {
    MockMultipartHttpServletRequestBuilder request = multipart("/corrections/" + id + "/files");
    for (MockMultipartFile file : files) {
      request.file(file);
    }
    return mvc.perform(request.with(SignedIn.as(actor)).with(csrf())).andReturn().getResponse();
  }

  private MockHttpServletResponse fetch(Actor actor, String path) throws Exception {
    return mvc.perform(get(path).with(SignedIn.as(actor))).andReturn().getResponse();
  }

  private String address(FileLine file) {
    return "/corrections/" + id + "/files/" + file.id();
  }

  private List<FileLine> files() {
    return attaching.attached(author, id).files();
  }

  @Test
  void aPhotographIsKeptWithoutThePlace() throws Exception {
    MockHttpServletResponse answer = send(author, file("latch.jpeg", Shots.withPlace(1)));
    assertThat(answer.getStatus()).isEqualTo(302);
    assertThat(answer.getRedirectedUrl()).isEqualTo("/corrections/" + id + "#attached");
    assertThat(files()).extracting(FileLine::name).containsExactly("latch.jpg");

    MockHttpServletResponse kept = fetch(author, address(files().get(0)));
    assertThat(kept.getStatus()).isEqualTo(200);
    assertThat(
            ImageMetadataReader.readMetadata(new ByteArrayInputStream(kept.getContentAsByteArray()))
                .containsDirectoryOfType(GpsDirectory.class))
        .isFalse();
  }

  @Test
  void aPhotographIsShownUnderAPolicyThatLetsNothingRun() throws Exception {
    send(author, file("latch.png", photograph(800)));
    MockHttpServletResponse shown = fetch(author, address(files().get(0)));
    assertThat(shown.getContentType()).isEqualTo("image/png");
    assertThat(shown.getHeader("Content-Disposition")).startsWith("inline");
    assertGuarded(shown);
    MockHttpServletResponse small = fetch(author, address(files().get(0)) + "/small");
    assertThat(small.getContentType()).isEqualTo("image/jpeg");
    assertThat(Shots.open(small.getContentAsByteArray()).getWidth()).isEqualTo(320);
    assertGuarded(small);
  }

  @Test
  void aDocumentIsHandedOutToBeSaved() throws Exception {
    send(author, file("bulletin.pdf", Documents.plain(true)));
    MockHttpServletResponse saved = fetch(author, address(files().get(0)));
    assertThat(saved.getContentType()).isEqualTo("application/pdf");
    assertThat(saved.getHeader("Content-Disposition"))
        .startsWith("attachment")
        .contains("bulletin.pdf");
    assertGuarded(saved);
    assertThat(fetch(author, address(files().get(0)) + "/small").getStatus()).isEqualTo(404);
  }

  private static void assertGuarded(MockHttpServletResponse answer) {
    assertThat(answer.getHeader("Content-Security-Policy"))
        .isEqualTo("default-src 'none'; style-src 'unsafe-inline'; sandbox");
    assertThat(answer.getHeader("X-Content-Type-Options")).isEqualTo("nosniff");
    assertThat(answer.getHeader("Cache-Control")).contains("private");
  }

  @Test
  void ofADraftOthersSeeNothing() throws Exception {
    send(author, file("latch.png", photograph(8)));
    String address = address(files().get(0));
    for (Actor actor : List.of(other, moderator)) {
      assertThat(fetch(actor, address).getStatus()).isEqualTo(404);
      assertThat(fetch(actor, address + "/small").getStatus()).isEqualTo(404);
      assertThat(fetch(actor, "/corrections/" + id + "/files").getStatus()).isEqualTo(404);
      assertThat(send(actor, file("x.png", photograph(9))).getStatus()).isEqualTo(404);
      assertThat(remove(actor, files().get(0)).getStatus()).isEqualTo(404);
    }
    assertThat(mvc.perform(get(address)).andReturn().getResponse().getRedirectedUrl())
        .startsWith("/sign-in");
    assertThat(files()).hasSize(1);
  }

  @Test
  void onceHandedInEveryMemberSeesThemAndNobodyChangesThem() throws Exception {
    send(author, file("latch.png", photograph(8)));
    drafting.describe(
        author,
        id,
        reading.version(author, id),
        "A bulletin",
        List.of(Ground.of("bulletin", "p. 1", club.yearline.citation.Stance.SUPPORTS, null)));
    drafting.submit(author, id, reading.version(author, id), null);
    FileLine file = files().get(0);
    assertThat(fetch(other, address(file)).getStatus()).isEqualTo(200);
    assertThat(fetch(moderator, address(file) + "/small").getStatus()).isEqualTo(200);
    assertThat(send(author, file("x.png", photograph(9))).getStatus()).isEqualTo(409);
    assertThat(remove(author, file).getStatus()).isEqualTo(409);
    assertThat(send(other, file("x.png", photograph(9))).getStatus()).isEqualTo(404);
    assertThat(fetch(author, "/corrections/" + id + "/files").getContentAsString())
        .contains("latch.png")
        .doesNotContain("type=\"file\"");
    assertThat(files()).hasSize(1);
  }

  @Test
  void aFileOfAnotherCorrectionIsNotFoundHere() throws Exception {
    send(author, file("latch.png", photograph(8)));
    long first = id;
    FileLine file = files().get(0);
    aDraft();
    assertThat(fetch(author, "/corrections/" + id + "/files/" + file.id()).getStatus())
        .isEqualTo(404);
    remove(author, file);
    id = first;
    assertThat(files()).hasSize(1);
  }

  private MockHttpServletResponse remove(Actor actor, FileLine file) throws Exception {
    return mvc.perform(post(address(file) + "/remove").with(SignedIn.as(actor)).with(csrf()))
        .andReturn()
        .getResponse();
  }

  @Test
  void aFileCanBeRemovedAndStaysGone() throws Exception {
    send(author, file("latch.png", photograph(8)));
    FileLine file = files().get(0);
    assertThat(remove(author, file).getStatus()).isEqualTo(302);
    assertThat(remove(author, file).getStatus()).isEqualTo(302);
    assertThat(files()).isEmpty();
    assertThat(fetch(author, address(file)).getStatus()).isEqualTo(404);
  }

  @Test
  void whatCannotBeTakenIsNamedAndTheRestIsKept() throws Exception {
    byte[] script = "<svg xmlns='http://www.w3.org/2000/svg'><script/></svg>".getBytes();
    MockHttpServletResponse answer =
        send(
            author,
            file("latch.png", photograph(8)),
            file("<b>drawing</b>.svg", script),
            file("empty.jpg", new byte[0]),
            file("half.pdf", "%PDF-1.7".getBytes(StandardCharsets.US_ASCII)));
    assertThat(answer.getStatus()).isEqualTo(422);
    assertThat(answer.getContentAsString())
        .contains("&lt;b&gt;drawing&lt;/b&gt;.svg: This is neither")
        .contains("empty.jpg: The file is empty")
        .contains("half.pdf: The PDF document is not whole")
        .contains("type=\"file\"");
    assertThat(files()).extracting(FileLine::name).containsExactly("latch.png");
  }

  @Test
  void aFormFromElsewhereAddsNothing() throws Exception {
    MockHttpServletResponse answer =
        mvc.perform(
                multipart("/corrections/" + id + "/files")
                    .file(file("a.png", photograph(8)))
                    .header("Origin", "https://elsewhere.example")
                    .with(SignedIn.as(author)))
            .andReturn()
            .getResponse();
    assertThat(answer.getStatus()).isEqualTo(403);
    assertThat(files()).isEmpty();
  }

  @Test
  void whoSendsWithoutEndIsSlowedDown() throws Exception {
    Actor hasty = SignedIn.person(context, "Hasty " + id, Role.MEMBER);
    EntryRef ref = new EntryRef(EntryKind.SOURCE, "hasty-" + id);
    Sheet sheet = Sheet.of(Sample.source(ref.key())).with("sources", List.of(source(ref.key())));
    id =
        drafting
            .begin(hasty, "Hasty", new Proposal(ref, sheet, 0), UUID.randomUUID().toString())
            .id();
    MockMultipartFile none = file("x.jpg", "text".getBytes(StandardCharsets.US_ASCII));
    int status = 422;
    for (int i = 0; i < 101 && status == 422; i++) {
      status = send(hasty, none).getStatus();
    }
    assertThat(status).isEqualTo(429);
  }

  @Test
  void choosingNothingSaysSo() throws Exception {
    MockHttpServletResponse answer = send(author, file("", new byte[0]));
    assertThat(answer.getStatus()).isEqualTo(422);
    assertThat(answer.getContentAsString()).contains("No file was chosen");
  }

  @Test
  void aSixthFileIsRefusedBeforeAnyIsKept() throws Exception {
    send(author, file("a.png", photograph(8)));
    MockMultipartFile[] five = new MockMultipartFile[5];
    for (int i = 0; i < five.length; i++) {
      five[i] = file(i + ".png", photograph(10 + i));
    }
    MockHttpServletResponse answer = send(author, five);
    assertThat(answer.getStatus()).isEqualTo(422);
    assertThat(answer.getContentAsString()).contains("at most 5 files");
    assertThat(files()).hasSize(1);
  }

  @Test
  void theSameFileTwiceIsKeptOnce() throws Exception {
    send(author, file("a.png", photograph(8)));
    send(author, file("b.png", photograph(8)));
    assertThat(files()).extracting(FileLine::name).containsExactly("a.png");
  }

  @Test
  void filesThatArriveAtOneMomentAreNeverTooMany() throws Exception {
    ExecutorService people = Executors.newFixedThreadPool(4);
    try {
      List<Callable<MockHttpServletResponse>> sending =
          java.util.stream.IntStream.range(0, 8)
              .<Callable<MockHttpServletResponse>>mapToObj(
                  i -> () -> send(author, file(i + ".png", photograph(20 + i))))
              .toList();
      for (Future<MockHttpServletResponse> answer : people.invokeAll(sending)) {
        assertThat(answer.get().getStatus()).isIn(302, 422);
      }
    } finally {
      people.shutdownNow();
    }
    assertThat(files()).hasSize(5);
  }
}
