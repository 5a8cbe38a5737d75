package club.yearline.corrections;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.accounts.WholeApplication;
import club.yearline.catalog.Edition;
import club.yearline.catalog.EntryRef;
import club.yearline.catalog.Publication;
import club.yearline.catalog.Snapshots;
import club.yearline.citation.Stance;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.EntryKind;
import club.yearline.tables.Sheet;
import club.yearline.testing.Sample;
import club.yearline.testing.SignedIn;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.context.TestPropertySource;
import org.springframework.test.web.servlet.MockMvc;

/** The history of an entry over corrections that were really approved. */
@WholeApplication
@TestPropertySource(properties = "start.of=entry-history")
class EntryHistoryTest {

  private static final EntryRef ROTARY = new EntryRef(EntryKind.CHANGE, "door-latch-rotary");
  private static final String HISTORY = "/history/change/door-latch-rotary";

  @Autowired private MockMvc mvc;
  @Autowired private ApplicationContext context;
  @Autowired private Publication publication;
  @Autowired private Snapshots snapshots;
  @Autowired private Drafting drafting;
  @Autowired private Moderation moderation;

  private Actor moderator;

  @BeforeEach
  void publish() {
    publication.publish(Edition.of("As at the start", null, Sample.turnstone()));
    SignedIn.person(context, Role.KEEPER);
    moderator = SignedIn.person(context, "Mona Moderator", Role.MODERATOR);
  }

  @Test
  void anApprovedCorrectionIsTheNewestStepWithItsSourceAndLeadsToItself() throws Exception {
    Actor member = SignedIn.person(context, "Mette Member", Role.MEMBER);
    int before = snapshots.head().number();
    long id = approved(member, 1967);
    Element newest = page(HISTORY).selectFirst(".history > li");
    assertThat(newest.select("h2 a").text()).isEqualTo("Revision " + (before + 1));
    assertThat(newest.text()).contains("Proposed by Mette Member, approved by Mona Moderator");
    assertThat(newest.select("ins").text()).contains("from 1967 on", "Source parts-book; p. 52-7");
    String link = "/corrections/of-revision/" + (before + 1);
    mvc.perform(get(link).with(SignedIn.as(member))).andExpect(redirectedUrl("/corrections/" + id));
    mvc.perform(get("/corrections/of-revision/1").with(SignedIn.as(member)))
        .andExpect(status().isNotFound());
  }

  @Test
  void aClosedAccountLeavesANeutralName() throws Exception {
    Actor leaver = SignedIn.person(context, "Lea Leaver", Role.MEMBER);
    approved(leaver, 1968);
    assertThat(page(HISTORY).text()).contains("Proposed by Lea Leaver");
    mvc.perform(
            post("/account/close")
                .param("current", SignedIn.PASSWORD)
                .with(SignedIn.as(leaver))
                .with(csrf()))
        .andExpect(redirectedUrl("/"));
    assertThat(page(HISTORY).text())
        .contains("Proposed by a former member, approved by Mona Moderator")
        .doesNotContain("Lea Leaver");
  }

  @Test
  void aWithdrawnEntryIsStillTold() throws Exception {
    publication.publish(
        Edition.of("Never was", "ada", List.<Entry>of()).withdrawing(Set.of(ROTARY)));
    mvc.perform(get("/changes/door-latch-rotary")).andExpect(status().isNotFound());
    Document page = page(HISTORY);
    assertThat(page.selectFirst(".history > li").text()).contains("withdrawn", "Never was", "ada");
    mvc.perform(get(page.select(".actions a").attr("href"))).andExpect(status().isOk());
  }

  @Test
  void everyPageOfAnEntryLeadsToItsHistory() throws Exception {
    for (String address :
        List.of(
            "/families/turnstone /history/family/turnstone",
            "/families/turnstone /history/series/lt",
            "/variants/la-2b /history/variant/la-2b",
            "/variants/la-2b /history/serial-block/lt-1966",
            "/features/door-latch /history/feature/door-latch",
            "/changes/door-latch-rotary /history/change/door-latch-rotary",
            "/sources/parts-book /history/source/parts-book")) {
      String[] parts = address.split(" ");
      assertThat(page(parts[0]).select("main a").eachAttr("href")).contains(parts[1]);
      page(parts[1]);
    }
  }

  /** The rotary latch in another year, handed in with a source and approved. */
  private long approved(Actor author, int year) {
    Sheet sheet = Sheet.of(snapshots.head().entry(ROTARY).orElseThrow());
    int head = snapshots.head().number();
    long id =
        drafting
            .begin(
                author,
                "The rotary latch came later",
                new Proposal(
                    ROTARY, Clubhouse.cutIn(sheet, "first_year", "settled_year", year), head),
                UUID.randomUUID().toString())
            .id();
    drafting.describe(
        author,
        id,
        version(id),
        "The rotary latch came later",
        List.of(Ground.of("parts-book", "p. 52-7", Stance.SUPPORTS, null)));
    drafting.submit(author, id, version(id), null);
    moderation.approve(moderator, id, version(id), head, null);
    return id;
  }

  private int version(long id) {
    return context.getBean(Corrections.class).findById(id).orElseThrow().version();
  }

  private Document page(String path) throws Exception {
    return Jsoup.parse(
        mvc.perform(get(path))
            .andExpect(status().isOk())
            .andReturn()
            .getResponse()
            .getContentAsString());
  }
}
