package club.yearline.corrections;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrlPattern;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.accounts.WholeApplication;
import club.yearline.catalog.Edition;
import club.yearline.catalog.Publication;
import club.yearline.catalog.Snapshots;
import club.yearline.testing.Sample;
import club.yearline.testing.SignedIn;
import java.util.List;
import java.util.UUID;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.context.TestPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/** The pages about corrections, on the whole application: what people type, right and wrong. */
@WholeApplication
@TestPropertySource(properties = "start.of=correction-pages")
class CorrectionPagesTest {

  private static final String SCRIPT = "<script>alert('x')</script>";

  @Autowired private MockMvc mvc;
  @Autowired private ApplicationContext context;
  @Autowired private Publication publication;
  @Autowired private Snapshots snapshots;

  private Actor member;
  private Actor other;
  private Actor moderator;

  @BeforeEach
  void publishAndInvite() {
    publication.publish(Edition.of("As at the start", null, Sample.turnstone()));
    member = SignedIn.person(context, "Mette Member", Role.MEMBER);
    other = SignedIn.person(context, "Odd Other", Role.MEMBER);
    moderator = SignedIn.person(context, "Mona Moderator", Role.MODERATOR);
  }

  // The form

  @Test
  void aVisitorIsAskedToSignIn() throws Exception {
    mvc.perform(get("/corrections")).andExpect(redirectedUrlPattern("/sign-in**"));
    mvc.perform(get("/corrections/new?kind=change&key=door-latch-rotary"))
        .andExpect(redirectedUrlPattern("/sign-in**"));
  }

  @Test
  void theFormHoldsTheEntryAsPublished() throws Exception {
    Document page = page(as(member, get("/corrections/new?kind=change&key=door-latch-rotary")));
    assertThat(page.getElementById("cut-ins.0.first_year").val()).isEqualTo("1966");
    assertThat(page.getElementById("changes.0.feature").val()).isEqualTo("door-latch");
    assertThat(page.select("datalist#known-variants option").eachAttr("value"))
        .containsExactly("la-2b");
    assertThat(page.select("label").stream().map(l -> l.attr("for")))
        .allMatch(id -> page.getElementById(id) != null);
  }

  @Test
  void whatIsSavedIsADraftThatOnlyItsAuthorSees() throws Exception {
    String address = begin("1967");
    mvc.perform(as(member, get(address)))
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("The latch came later")));
    mvc.perform(as(other, get(address))).andExpect(status().isNotFound());
    mvc.perform(as(moderator, get(address))).andExpect(status().isNotFound());
    mvc.perform(as(member, get("/corrections")))
        .andExpect(content().string(containsString(address + "\"")));
    mvc.perform(as(moderator, get("/corrections")))
        .andExpect(status().isOk())
        .andExpect(content().string(not(containsString(address + "\""))));
  }

  @Test
  void aFormSentTwiceBeginsOneCorrection() throws Exception {
    String token = UUID.randomUUID().toString();
    String first = address(save("1967").param("token", token));
    assertThat(address(save("1967").param("token", token))).isEqualTo(first);
  }

  @Test
  void whatCannotBeReadIsSaidAtItsFieldAndWhatWasTypedIsKept() throws Exception {
    Document page = page(as(member, save("nineteen").param("token", "t")));
    assertThat(page.getElementById("cut-ins.0.first_year").val()).isEqualTo("nineteen");
    assertThat(page.getElementById("cut-ins.0.first_year").attr("aria-invalid")).isEqualTo("true");
    assertThat(page.getElementById("cut-ins.0.first_year-fault").text()).contains("whole number");
    assertThat(page.getElementById("title").val()).isEqualTo("The latch came later");
  }

  @Test
  void aMissingTitleIsAskedFor() throws Exception {
    Document page =
        page(
            as(
                member,
                entry("/corrections/new", "1967", snapshots.head().number()).param("title", " ")));
    assertThat(page.getElementById("title-fault").text()).isNotEmpty();
    assertThat(page.getElementById("cut-ins.0.first_year").val()).isEqualTo("1967");
  }

  @Test
  void anOverLongTextIsRefusedAtItsField() throws Exception {
    Document page =
        page(
            as(
                member,
                save("1967").param("changes.0.detail", "x".repeat(50_000)).param("token", "t")));
    assertThat(page.select(".fault").text()).contains("too long");
  }

  @Test
  void nothingChangedIsSaidInsteadOfSaved() throws Exception {
    Document page = page(as(member, save("1966").param("token", "t")));
    assertThat(page.select("[role=alert]").text()).contains("Nothing differs");
  }

  @Test
  void oneMoreRowKeepsWhatWasTypedAndSavesNothing() throws Exception {
    Document page = page(as(member, save("1971").param("more", "cut-ins")));
    assertThat(page.getElementById("cut-ins.0.first_year").val()).isEqualTo("1971");
    assertThat(page.getElementById("cut-ins.3.variant")).isNotNull();
  }

  @Test
  void aRowThatIsTakenOutIsGone() throws Exception {
    String address = address(save("1967").param("citations.0.remove", "true"));
    Document page = page(as(member, get(address + "/edit?kind=change&key=door-latch-rotary")));
    assertThat(page.getElementById("cut-ins.0.first_year").val()).isEqualTo("1967");
    assertThat(page.getElementById("citations.0.source").val()).isEmpty();
  }

  @Test
  void aNewEntryGetsAShortNameOfItsName() throws Exception {
    String address =
        address(
            as(
                member,
                post("/corrections/new")
                    .with(csrf())
                    .param("kind", "feature")
                    .param("new", "true")
                    .param("title", "A feature")
                    .param("features.0.name", "Fläkt, höger")
                    .param("features.0.chapter", "21")
                    .param("features.0.kind", "choice")
                    .param("features.0.visibility", "close")
                    .param("features.0.exchange", "bolt-on")
                    .param("feature-values.0.label", "Round & wide")));
    Document page = page(as(member, get(address + "/edit?kind=feature&key=flakt-hoger")));
    assertThat(page.getElementById("feature-values.0.key").val()).isEqualTo("round-wide");
  }

  @Test
  void aShortNameThatIsTakenIsRefused() throws Exception {
    Document page =
        page(
            as(
                member,
                post("/corrections/new")
                    .with(csrf())
                    .param("kind", "family")
                    .param("new", "true")
                    .param("key", "turnstone")
                    .param("title", "Again")
                    .param("families.0.maker", "Lindmark Aero")
                    .param("families.0.name", "Other")
                    .param("families.0.year_means", "model-year")));
    assertThat(page.getElementById("key-fault").text()).contains("already");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/corrections/new?kind=person",
        "/corrections/new?kind=change&key=none",
        "/corrections/999999",
        "/corrections/999999/edit?kind=change&key=door-latch-rotary",
        "/corrections/999999/sources",
        "/corrections/999999/merge"
      })
  void whatDoesNotExistIsNotFound(String address) throws Exception {
    mvc.perform(as(member, get(address))).andExpect(status().isNotFound());
  }

  @ParameterizedTest
  @ValueSource(strings = {"/corrections/x", "/corrections/1?page=x", "/corrections/new"})
  void anAddressThatCannotBeReadIsRefusedPlainly(String address) throws Exception {
    mvc.perform(as(member, get(address))).andExpect(status().is4xxClientError());
  }

  @Test
  void whatAnotherSiteSendsIsRefused() throws Exception {
    String address = submitted("1967");
    mvc.perform(
            as(moderator, post(address + "/approve"))
                .header("Origin", "https://elsewhere.example")
                .param("version", "" + version(address))
                .param("onto", "" + snapshots.head().number()))
        .andExpect(status().isForbidden());
  }

  @Test
  void aFormWithoutItsTokenIsShownAgainAndChangesNothing() throws Exception {
    String address = submitted("1967");
    int before = snapshots.head().number();
    mvc.perform(
        as(moderator, post(address + "/approve"))
            .param("version", "" + version(address))
            .param("onto", "" + before));
    assertThat(snapshots.head().number()).isEqualTo(before);
  }

  @Test
  void scriptInAnyFieldIsShownAndNeverRun() throws Exception {
    String address =
        address(
            save("1967")
                .param("changes.0.detail", SCRIPT)
                .param("cut-ins.1.variant", "la-2b" + SCRIPT)
                .param("cut-ins.1.remove", "true"));
    ground(address, "parts-book", SCRIPT);
    mvc.perform(
        as(
            member,
            post(address + "/remark").with(csrf()).param("token", "r").param("note", SCRIPT)));
    for (String page : new String[] {"", "/edit?kind=change&key=door-latch-rotary", "/sources"}) {
      mvc.perform(as(member, get(address + page)))
          .andExpect(status().isOk())
          .andExpect(content().string(not(containsString(SCRIPT))));
    }
  }

  // Sources

  @Test
  void anUnknownSourceIsRefusedAtItsField() throws Exception {
    String address = begin("1967");
    Document page = page(as(member, ground(version(address), address, "no-such-book", "p. 1")));
    assertThat(page.getElementById("ground.0.source-fault").text()).contains("no source");
    assertThat(page.getElementById("ground.0.source").val()).isEqualTo("no-such-book");
  }

  @Test
  void aSourceWithoutAPlaceInItIsRefused() throws Exception {
    String address = begin("1967");
    Document page = page(as(member, ground(version(address), address, "parts-book", "")));
    assertThat(page.getElementById("ground.0.locator-fault").text()).isNotEmpty();
  }

  // Deciding

  @Test
  void aHandedInCorrectionShowsItsImpactAndIsDecided() throws Exception {
    String address = submitted("1967");
    Document page = page(as(moderator, get(address)));
    assertThat(page.select("#impact ~ details table").text()).contains("1966");
    assertThat(page.select(".redrawn .label").eachText()).containsExactly("Before", "After");
    assertThat(page.select(".redrawn svg[role=group]")).hasSize(2);
    assertThat(page.select("button").eachText()).contains("Approve and publish", "Reject");
    int before = snapshots.head().number();
    decide(address, "approve", moderator, "").andExpect(status().is3xxRedirection());
    assertThat(snapshots.head().number()).isEqualTo(before + 1);
    mvc.perform(as(member, get(address)))
        .andExpect(content().string(containsString("/revisions/" + (before + 1))));
    mvc.perform(get("/revisions/" + (before + 1)))
        .andExpect(content().string(containsString("Mette Member")))
        .andExpect(content().string(containsString("Mona Moderator")));
  }

  @Test
  void aMemberIsOfferedNoDecisionAndMayForgeNone() throws Exception {
    String address = submitted("1967");
    Document page = page(as(other, get(address)));
    assertThat(page.select("button").eachText()).doesNotContain("Approve and publish");
    decide(address, "approve", other, "").andExpect(status().isForbidden());
    decide(address, "reject", other, "No").andExpect(status().isForbidden());
    mvc.perform(
            as(
                other,
                entry(address + "/mend", "1968", snapshots.head().number()).param("version", "0")))
        .andExpect(status().isForbidden());
  }

  @Test
  void whoSendsBackSaysWhy() throws Exception {
    String address = submitted("1967");
    decide(address, "send-back", moderator, " ").andExpect(status().isUnprocessableContent());
    decide(address, "send-back", moderator, "x".repeat(5000))
        .andExpect(status().isUnprocessableContent());
    decide(address, "send-back", moderator, "Which page?").andExpect(status().is3xxRedirection());
    mvc.perform(as(member, get(address)))
        .andExpect(content().string(containsString("Which page?")));
  }

  @Test
  void anImpactThatIsOutOfDateIsNotApproved() throws Exception {
    String address = submitted("1967");
    int version = version(address);
    publication.publish(Edition.of("Something else", null, List.of(Sample.family("x"))));
    mvc.perform(
            as(
                moderator,
                post(address + "/approve")
                    .with(csrf())
                    .param("version", "" + version)
                    .param("onto", "" + (snapshots.head().number() - 1))))
        .andExpect(status().isConflict())
        .andExpect(content().string(containsString("moved on")));
  }

  @Test
  void aStaleFormKeepsWhatWasTyped() throws Exception {
    String address = begin("1967");
    int stale = version(address);
    ground(address, "parts-book", "p. 3");
    Document page =
        page(
            as(
                member,
                entry(address + "/edit", "1968", snapshots.head().number())
                    .param("version", "" + stale)));
    assertThat(page.select("[role=alert]").text()).contains("changed elsewhere");
    assertThat(page.getElementById("cut-ins.0.first_year").val()).isEqualTo("1968");
  }

  @Test
  void clashesAreAskedAboutAndTheAnswersSaved() throws Exception {
    String address = submitted("1967");
    publication.publish(
        Edition.of(
            "Meanwhile",
            null,
            List.of(
                Sample.change(
                    "door-latch-rotary", "door-latch", "rotary", Sample.fromYear("la-2b", 1965)))));
    Document page = page(as(moderator, get(address + "/merge")));
    assertThat(page.select("fieldset")).hasSize(2);
    MockHttpServletRequestBuilder answer =
        post(address + "/merge").with(csrf()).param("version", "" + version(address));
    mvc.perform(as(moderator, answer)).andExpect(content().string(containsString("one side")));
    for (Element side : page.select("input[value=theirs]")) {
      answer.param(side.attr("name"), "theirs");
    }
    mvc.perform(as(moderator, answer)).andExpect(redirectedUrlPattern("/corrections/*"));
    mvc.perform(as(moderator, get(address)))
        .andExpect(content().string(containsString("mended a slip")));
  }

  @Test
  void aRevisionIsTakenBackByACorrection() throws Exception {
    String address = submitted("1967");
    decide(address, "approve", moderator, "");
    int revision = snapshots.head().number();
    String undo =
        address(
            as(
                member,
                post("/corrections/undo")
                    .with(csrf())
                    .param("revision", "" + revision)
                    .param("token", UUID.randomUUID().toString())));
    mvc.perform(as(member, get(undo)))
        .andExpect(content().string(containsString("Take back revision " + revision)));
    mvc.perform(
            as(
                member,
                post("/corrections/undo")
                    .with(csrf())
                    .param("revision", "" + (revision + 7))
                    .param("token", "u")))
        .andExpect(status().isNotFound());
  }

  @Test
  void nothingOfACorrectionIsKeptByCaches() throws Exception {
    mvc.perform(as(member, get(begin("1967"))))
        .andExpect(header().string("Cache-Control", startsWith("no-")));
  }

  // How the tests speak

  private String begin(String year) throws Exception {
    return address(save(year).param("token", UUID.randomUUID().toString()));
  }

  private String submitted(String year) throws Exception {
    String address = begin(year);
    ground(address, "parts-book", "p. 52-7");
    mvc.perform(
            as(
                member,
                post(address + "/submit").with(csrf()).param("version", "" + version(address))))
        .andExpect(status().is3xxRedirection());
    return address;
  }

  private MockHttpServletRequestBuilder save(String year) {
    return as(
        member,
        entry("/corrections/new", year, snapshots.head().number())
            .param("title", "The latch came later"));
  }

  private static MockHttpServletRequestBuilder entry(String action, String year, int base) {
    return post(action)
        .with(csrf())
        .param("kind", "change")
        .param("key", "door-latch-rotary")
        .param("base", "" + base)
        .param("changes.0.feature", "door-latch")
        .param("changes.0.title", "Change door-latch-rotary")
        .param("change-offerings.0.value", "rotary")
        .param("change-offerings.0.fit", "standard")
        .param("cut-ins.0.variant", "la-2b")
        .param("cut-ins.0.first_year", year)
        .param("cut-ins.0.settled_year", year)
        .param("citations.0.key", "door-latch-rotary-cited")
        .param("citations.0.locator", "fig. 31")
        .param("citations.0.source", "parts-book")
        .param("citations.0.stance", "supports");
  }

  private void ground(String address, String source, String locator) throws Exception {
    mvc.perform(as(member, ground(version(address), address, source, locator)))
        .andExpect(status().is3xxRedirection());
  }

  private static MockHttpServletRequestBuilder ground(
      int version, String address, String source, String locator) {
    return post(address + "/sources")
        .with(csrf())
        .param("version", "" + version)
        .param("title", "The latch came later")
        .param("ground.0.source", source)
        .param("ground.0.locator", locator)
        .param("ground.0.stance", "supports");
  }

  private ResultActions decide(String address, String verb, Actor actor, String note)
      throws Exception {
    return mvc.perform(
        as(
            actor,
            post(address + "/" + verb)
                .with(csrf())
                .param("version", "" + version(address))
                .param("onto", "" + snapshots.head().number())
                .param("note", note)));
  }

  private int version(String address) {
    long id = Long.parseLong(address.substring(address.lastIndexOf('/') + 1));
    return context.getBean(Corrections.class).findById(id).orElseThrow().version();
  }

  private static MockHttpServletRequestBuilder as(
      Actor actor, MockHttpServletRequestBuilder request) {
    return request.with(SignedIn.as(actor));
  }

  private String address(MockHttpServletRequestBuilder request) throws Exception {
    return mvc.perform(request)
        .andExpect(redirectedUrlPattern("/corrections/*"))
        .andReturn()
        .getResponse()
        .getRedirectedUrl();
  }

  private Document page(MockHttpServletRequestBuilder request) throws Exception {
    return Jsoup.parse(
        mvc.perform(request)
            .andExpect(status().isOk())
            .andReturn()
            .getResponse()
            .getContentAsString());
  }
}
