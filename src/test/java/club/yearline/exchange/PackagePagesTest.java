package club.yearline.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.accounts.WholeApplication;
import club.yearline.catalog.EntryRef;
import club.yearline.catalog.Snapshots;
import club.yearline.effectivity.EntryKind;
import club.yearline.effectivity.Picture;
import club.yearline.testing.SignedIn;
import club.yearline.uploads.Shots;
import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.UUID;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.context.TestPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/**
 * Data packages brought by members and keepers. Has a database of its own: other tests publish
 * entries of the same keys.
 */
@WholeApplication
@TestPropertySource(properties = "spring.application.name=packages")
class PackagePagesTest {

  private static final EntryRef FAMILY = new EntryRef(EntryKind.FAMILY, "turnstone");

  @Autowired ApplicationContext context;
  @Autowired MockMvc mvc;
  @Autowired Snapshots snapshots;
  @Autowired JdbcClient jdbc;
  @TempDir Path folder;

  private Actor member;
  private Actor moderator;
  private Actor keeper;

  @BeforeEach
  void people() {
    member = SignedIn.person(context, "Mette Member", Role.MEMBER);
    moderator = SignedIn.person(context, "Mona Moderator", Role.MODERATOR);
    keeper = SignedIn.person(context, "Kim Keeper", Role.KEEPER);
  }

  /** A clean package that differs from all that were published before. */
  private static Packages fresh() {
    return Packages.clean()
        .with(
            "families.csv",
            "key,maker,name,year_means,summary\nturnstone,Lindmark Aero,Turnstone,model-year,"
                + UUID.randomUUID()
                + "\n");
  }

  private MockMultipartFile zip(String name, Packages of) throws Exception {
    Path zip = of.zip(folder.resolve(UUID.randomUUID() + ".zip"));
    return new MockMultipartFile("file", name, "application/zip", Files.readAllBytes(zip));
  }

  private MockHttpServletResponse send(Actor actor, String path, MockMultipartFile file)
      throws Exception {
    return send(actor, path, file, UUID.randomUUID().toString());
  }

  private MockHttpServletResponse send(
      Actor actor, String path, MockMultipartFile file, String token) throws Exception {
    return mvc.perform(
            multipart(path).file(file).param("token", token).with(SignedIn.as(actor)).with(csrf()))
        .andReturn()
        .getResponse();
  }

  private Document page(Actor actor, String path) throws Exception {
    MockHttpServletResponse answer =
        mvc.perform(get(path).with(SignedIn.as(actor))).andReturn().getResponse();
    assertThat(answer.getStatus()).isEqualTo(200);
    return Jsoup.parse(answer.getContentAsString());
  }

  /** Sends a form that stands on a page, as a browser does. */
  private MockHttpServletResponse press(Actor actor, String path, String verb) throws Exception {
    Document page = page(actor, path);
    MockHttpServletRequestBuilder form = post(path + "/" + verb);
    page.select("form:has(button)[action=" + path + "/" + verb + "] input[type=hidden]")
        .forEach(field -> form.param(field.attr("name"), field.attr("value")));
    return mvc.perform(form.with(SignedIn.as(actor)).with(csrf())).andReturn().getResponse();
  }

  private long corrections() {
    return jdbc.sql("select count(*) from correction").query(Long.class).single();
  }

  @Test
  void aMembersPackageBecomesADraftThatIsHandedInAndApproved() throws Exception {
    byte[] shown = Shots.file(Shots.quarters(8, 8, BufferedImage.TYPE_INT_RGB), "png");
    String summary = "From the club’s own records " + UUID.randomUUID();
    Packages of =
        fresh()
            .with("pictures/latch.png", shown)
            .with(
                "families.csv",
                "key,maker,name,year_means,summary\nturnstone,Lindmark Aero,Turnstone,model-year,"
                    + summary
                    + "\n");
    int before = snapshots.head().number();

    String address =
        send(member, "/corrections/package", zip("records.zip", of)).getRedirectedUrl();

    assertThat(address).startsWith("/corrections/");
    assertThat(snapshots.head().number()).isEqualTo(before);
    Document draft = page(member, address);
    assertThat(draft.select("h1").text()).isEqualTo("Data package records.zip");
    assertThat(draft.select(".entries").text()).contains("Turnstone");
    String picture = draft.select(".pictures a:contains(latch.png)").attr("href");
    assertThat(
            mvc.perform(get(picture).with(SignedIn.as(member)))
                .andReturn()
                .getResponse()
                .getContentAsByteArray())
        .isEqualTo(shown);
    assertThat(press(member, address, "submit").getRedirectedUrl()).isEqualTo(address);
    assertThat(press(moderator, address, "approve").getRedirectedUrl()).isEqualTo(address);
    assertThat(snapshots.head().number()).isEqualTo(before + 1);
    assertThat(snapshots.head().entry(FAMILY).orElseThrow().toString()).contains(summary);
    assertThat(snapshots.head().catalogue().records().pictures())
        .extracting(Picture::name)
        .contains("latch.png");
    assertThat(page(member, address).select("#history ~ ol").text())
        .contains("Mona Moderator approved it");
  }

  @Test
  void aKeepersPackageIsLookedAtAndThenPublishedByTheKeeper() throws Exception {
    int before = snapshots.head().number();
    String address = send(keeper, "/import", zip("records.zip", fresh())).getRedirectedUrl();
    assertThat(snapshots.head().number()).isEqualTo(before);

    assertThat(press(keeper, address, "approve").getRedirectedUrl()).isEqualTo(address);

    assertThat(snapshots.head().number()).isEqualTo(before + 1);
    assertThat(page(member, address).select("#history ~ ol").text())
        .contains("Kim Keeper approved an own data package, as a keeper may");
  }

  @Test
  void nobodyElseDecidesOnAnOwnPackage() throws Exception {
    String address =
        send(moderator, "/corrections/package", zip("records.zip", fresh())).getRedirectedUrl();
    press(moderator, address, "submit");
    int before = snapshots.head().number();
    Document page = page(moderator, address);
    String version = page.select("input[name=version]").attr("value");
    MockHttpServletResponse answer =
        mvc.perform(
                post(address + "/approve")
                    .param("version", version)
                    .param("onto", String.valueOf(before))
                    .with(SignedIn.as(moderator))
                    .with(csrf()))
            .andReturn()
            .getResponse();
    assertThat(answer.getStatus()).isEqualTo(403);
    assertThat(snapshots.head().number()).isEqualTo(before);
  }

  @Test
  void onlyAKeeperImports() throws Exception {
    for (Actor actor : new Actor[] {member, moderator}) {
      assertThat(send(actor, "/import", zip("x.zip", fresh())).getStatus()).isEqualTo(403);
    }
    assertThat(mvc.perform(get("/import")).andReturn().getResponse().getRedirectedUrl())
        .startsWith("/sign-in");
    assertThat(page(keeper, "/import").select("input[type=file]")).hasSize(1);
    assertThat(page(member, "/corrections/package").select("input[type=file]")).hasSize(1);
  }

  @Test
  void errorsAreReportedWithTheirPlaceAndNothingIsStored() throws Exception {
    Packages bad =
        fresh()
            .adding("variants.csv", "la-3,nowhere,<script>alert(1)</script>")
            .adding("production_runs.csv", "la-2b,19x4,1968")
            .with("pictures/latch.svg", "<svg xmlns='http://www.w3.org/2000/svg'><script/></svg>");
    long stored = corrections();

    MockHttpServletResponse answer = send(member, "/corrections/package", zip("<b>bad.zip", bad));

    assertThat(answer.getStatus()).isEqualTo(422);
    Document page = Jsoup.parse(answer.getContentAsString());
    assertThat(page.select("script:not([src])")).isEmpty();
    assertThat(page.select("#report").text()).contains("<b>bad.zip has errors");
    assertThat(page.select("tbody tr").eachText())
        .anyMatch(
            line ->
                line.contains("production_runs.csv, line 3, column first_year")
                    && line.contains("19x4")
                    && line.contains("Write digits only"))
        .anyMatch(line -> line.contains("pictures/latch.svg"));
    assertThat(page.select("input[type=file]")).hasSize(1);
    assertThat(corrections()).isEqualTo(stored);
  }

  @Test
  void aReportIsOfBoundedLength() throws Exception {
    Packages bad = fresh();
    StringBuilder rows = new StringBuilder("variant,first_year,last_year\n");
    for (int i = 0; i < 5000; i++) {
      rows.append("la-2b,x").append(i).append(",1968\n");
    }
    MockHttpServletResponse answer =
        send(
            member,
            "/corrections/package",
            zip("long.zip", bad.with("production_runs.csv", rows.toString())));
    Document page = Jsoup.parse(answer.getContentAsString());
    assertThat(page.select("tbody tr")).hasSize(300);
    assertThat(page.text()).contains("And").contains("more, which are not shown");
  }

  @Test
  void whatIsNoPackageIsRefusedByTheNameThatItWasSentUnder() throws Exception {
    byte[] text = "just text".getBytes(StandardCharsets.US_ASCII);
    MockMultipartFile file = new MockMultipartFile("file", "C:\\a\\notes.zip", null, text);
    MockHttpServletResponse answer = send(member, "/corrections/package", file);
    assertThat(answer.getStatus()).isEqualTo(422);
    assertThat(Jsoup.parse(answer.getContentAsString()).select("tbody tr").text())
        .contains("notes.zip")
        .contains("neither a folder nor a zip")
        .doesNotContain("C:")
        .doesNotContain("/tmp");
  }

  @Test
  void noFileSaysSo() throws Exception {
    MockMultipartFile none = new MockMultipartFile("file", "", null, new byte[0]);
    MockHttpServletResponse answer = send(member, "/corrections/package", none);
    assertThat(answer.getStatus()).isEqualTo(422);
    assertThat(answer.getContentAsString()).contains("No package was chosen");
  }

  @Test
  void aPackageThatReadsAsPublishedProposesNothing() throws Exception {
    Packages of = fresh();
    String address = send(keeper, "/import", zip("records.zip", of)).getRedirectedUrl();
    press(keeper, address, "approve");
    long stored = corrections();
    MockHttpServletResponse again = send(member, "/corrections/package", zip("records.zip", of));
    assertThat(again.getStatus()).isEqualTo(422);
    assertThat(again.getContentAsString()).contains("reads as it is published already");
    assertThat(corrections()).isEqualTo(stored);
  }

  @Test
  void aFormThatIsSentTwiceBeginsOneCorrection() throws Exception {
    MockMultipartFile file = zip("records.zip", fresh());
    String first = send(keeper, "/import", file, "the-same-form").getRedirectedUrl();
    assertThat(send(keeper, "/import", file, "the-same-form").getRedirectedUrl()).isEqualTo(first);
  }
}
