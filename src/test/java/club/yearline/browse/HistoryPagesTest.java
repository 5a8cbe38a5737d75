package club.yearline.browse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.anyCollection;
import static org.mockito.BDDMockito.given;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import club.yearline.accounts.People;
import club.yearline.accounts.Role;
import club.yearline.accounts.SecurityConfiguration;
import club.yearline.catalog.Contributor;
import club.yearline.catalog.Contributors;
import club.yearline.catalog.EntryRef;
import club.yearline.catalog.History;
import club.yearline.catalog.Revision;
import club.yearline.catalog.Snapshot;
import club.yearline.catalog.Snapshots;
import club.yearline.catalog.VersionSpan;
import club.yearline.catalog.Wording;
import club.yearline.citation.Citation;
import club.yearline.citation.Stance;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Entry;
import club.yearline.testing.Sample;
import club.yearline.testing.SignedIn;
import club.yearline.testing.SmallCatalogue;
import club.yearline.web.Phrases;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.webmvc.test.autoconfigure.WebMvcTest;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.bean.override.mockito.MockitoBean;
import org.springframework.test.web.servlet.MockMvc;

@WebMvcTest(HistoryPages.class)
@Import({
  SecurityConfiguration.class,
  HistoryViews.class,
  RecordTexts.class,
  RecordSections.class,
  Wording.class,
  Phrases.class,
  Contributors.class
})
class HistoryPagesTest {

  private static final int NEWEST = 40;
  private static final Catalogue SMALL = Catalogue.of(SmallCatalogue.records());
  private static final long MEMBER = 7;
  private static final long MODERATOR = 8;

  private final List<Revision> revisions = new ArrayList<>();

  @Autowired MockMvc mvc;
  @MockitoBean Snapshots snapshots;
  @MockitoBean History history;
  @MockitoBean People people;

  @BeforeEach
  void publish() {
    for (int i = 1; i <= NEWEST; i++) {
      Revision revision = revision(i);
      Snapshot snapshot = new Snapshot(revision, SMALL);
      given(snapshots.at(i)).willReturn(snapshot);
      given(snapshots.head()).willReturn(snapshot);
      revisions.add(0, revision);
    }
    given(snapshots.revisions(anyCollection()))
        .willAnswer(
            asked -> {
              Collection<Integer> numbers = asked.getArgument(0);
              return revisions.stream().filter(r -> numbers.contains(r.number())).toList();
            });
    given(people.nameOf(MEMBER)).willReturn("Mette Member");
    given(people.nameOf(MODERATOR)).willReturn("Mona Moderator");
  }

  /** The first from the command line, the second nobody's, then a member's, then a moderator's. */
  private static Revision revision(int number) {
    Contributor proposer =
        switch (number) {
          case 1 -> Contributor.named("ada");
          case 2 -> Contributor.NOBODY;
          case 3 -> Contributor.person(MEMBER);
          default -> Contributor.person(MODERATOR);
        };
    return new Revision(
        number,
        Instant.parse("2026-03-01T10:15:30Z").plusSeconds(86_400L * number),
        "Note " + number,
        proposer,
        number == 3 ? Contributor.person(MODERATOR) : proposer);
  }

  @Test
  void tellsWhoSaidWhatWhenAndOnWhichSource() throws Exception {
    given(history.of(ref("latch-rotary").kind(), "latch-rotary"))
        .willReturn(
            List.of(
                new VersionSpan(1, 3, change("latch-rotary", 1966, "fig. 31")),
                new VersionSpan(
                    3, VersionSpan.OPEN, change("latch-rotary", 1967, "fig. 31, note 4"))));
    Document page = page("/history/change/latch-rotary");
    assertThat(page.select("h1").text()).endsWith("Change latch-rotary");
    assertThat(page.select(".history > li")).hasSize(2);
    Element newest = page.selectFirst(".history > li");
    assertThat(newest.text())
        .contains(
            "Revision 3 changed 2026-03-04 10:15Z",
            "Note 3",
            "Proposed by Mette Member, approved by Mona Moderator");
    assertThat(newest.select("del").text()).contains("from 1966 on", "fig. 31");
    assertThat(newest.select("ins").text()).contains("from 1967 on", "fig. 31, note 4");
    assertThat(newest.select("a").eachAttr("href"))
        .containsExactly("/revisions/3", "/changes/latch-rotary?rev=3");
    Element first = page.select(".history > li").get(1);
    assertThat(first.text()).contains("Revision 1 added", "Proposed by ada");
    assertThat(first.select("ins").text()).contains("from 1966 on", "parts-book; fig. 31");
  }

  @Test
  void saysWhereAPersonApprovedAloneAndWhereNobodyIsNamed() throws Exception {
    told(
        "latch-rotary",
        new VersionSpan(2, 4, change("latch-rotary", 1966, "p. 1")),
        new VersionSpan(4, VersionSpan.OPEN, change("latch-rotary", 1967, "p. 1")));
    assertThat(page("/history/change/latch-rotary").select(".history > li").eachText())
        .anyMatch(t -> t.contains("Proposed by Mona Moderator, approved by the same person"))
        .anyMatch(t -> t.contains("Nobody is named"));
  }

  @Test
  void aPageThatNamesPeopleIsAskedForAnewAlsoAtAFixedRevision() throws Exception {
    told(
        "latch-rotary", new VersionSpan(2, VersionSpan.OPEN, change("latch-rotary", 1966, "p. 1")));
    for (String address :
        List.of("/history/change/latch-rotary", "/history/change/latch-rotary?rev=5")) {
      mvc.perform(get(address))
          .andExpect(status().isOk())
          .andExpect(header().string("Cache-Control", "no-cache, private"))
          .andExpect(header().doesNotExist("ETag"));
    }
  }

  @Test
  void aWithdrawnEntryKeepsItsHistory() throws Exception {
    told(
        "gone",
        new VersionSpan(1, 3, change("gone", 1966, "p. 1")),
        new VersionSpan(5, 6, change("gone", 1966, "p. 2")));
    Document page = page("/history/change/gone");
    assertThat(page.select(".history h2 .edit").eachText())
        .containsExactly("withdrawn", "added", "withdrawn", "added");
    assertThat(page.select(".plate").text()).contains("not in the catalogue any more");
    assertThat(page.select(".actions a").attr("href")).isEqualTo("/changes/gone?rev=5");
    assertThat(page.selectFirst(".history .ways-on a").attr("href"))
        .isEqualTo("/changes/gone?rev=5");
    Document back = page("/history/change/gone?rev=5");
    assertThat(back.select(".history > li")).hasSize(3);
    assertThat(back.select(".plate").text()).doesNotContain("not in the catalogue");
    assertThat(back.select(".actions a").attr("href")).isEqualTo("/changes/gone?rev=5");
    assertThat(back.selectFirst(".history h2 a").attr("href")).isEqualTo("/revisions/5?rev=5");
  }

  @Test
  void leadsThoseSignedInToTheCorrection() throws Exception {
    told(
        "latch-rotary",
        new VersionSpan(1, 3, change("latch-rotary", 1966, "p. 1")),
        new VersionSpan(3, VersionSpan.OPEN, change("latch-rotary", 1967, "p. 1")));
    assertThat(page("/history/change/latch-rotary").select("[href^=/corrections]")).isEmpty();
    String html =
        mvc.perform(get("/history/change/latch-rotary").with(SignedIn.as(Role.MEMBER)))
            .andReturn()
            .getResponse()
            .getContentAsString();
    assertThat(Jsoup.parse(html).select("main [href^=/corrections]").eachAttr("href"))
        .containsExactly("/corrections/of-revision/3");
  }

  @Test
  void aLongHistoryIsReadPageByPage() throws Exception {
    VersionSpan[] spans = new VersionSpan[NEWEST];
    for (int i = 1; i <= NEWEST; i++) {
      int until = i == NEWEST ? VersionSpan.OPEN : i + 1;
      spans[i - 1] = new VersionSpan(i, until, change("latch-rotary", 1900 + i, "p. 1"));
    }
    told("latch-rotary", spans);
    Document page = page("/history/change/latch-rotary?page=2");
    assertThat(page.select(".history > li")).hasSize(10);
    assertThat(page.select(".history > li h2 a").last().text()).isEqualTo("Revision 1");
    assertThat(page.select(".pages a[rel=prev]").attr("href"))
        .isEqualTo("/history/change/latch-rotary?page=1");
    assertThat(page("/history/change/latch-rotary?page=99").select(".history > li")).hasSize(10);
  }

  @Test
  void everyKindOfEntryHasOne() throws Exception {
    for (Entry entry : SMALL.records().entries()) {
      given(history.of(entry.kind(), entry.key()))
          .willReturn(List.of(new VersionSpan(1, VersionSpan.OPEN, entry)));
      Document page = page("/history/" + entry.kind().code() + "/" + entry.key());
      assertThat(page.select(".history > li")).as(entry.key()).hasSize(1);
      assertThat(page.select(".plate .label").text()).isNotEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "/history/change/none, nothing of the kind “Change” with the key “none”",
    "/history/person/ada, “person” is none of family",
    "/history/changes/none, “changes” is none of family",
  })
  void refusesWhatNeverWasAndSaysWhatToDo(String path, String text) throws Exception {
    String html =
        mvc.perform(get(path))
            .andExpect(status().isNotFound())
            .andReturn()
            .getResponse()
            .getContentAsString();
    assertThat(Jsoup.parse(html).select("main").text()).contains(text, "What to do");
  }

  @Test
  void knowsNothingOfWhatCameAfterTheRevisionRead() throws Exception {
    told("later", new VersionSpan(3, VersionSpan.OPEN, change("later", 1966, "p. 1")));
    mvc.perform(get("/history/change/later?rev=2")).andExpect(status().isNotFound());
    assertThat(page("/history/change/later?rev=3").select(".past")).hasSize(1);
  }

  @Test
  void escapesWhateverARecordSays() throws Exception {
    String script = SmallCatalogue.SCRIPT;
    Change hostile =
        new Change(
            "hostile",
            "door-latch",
            script,
            script,
            List.of(),
            List.of(),
            List.of(Sample.citation(script, script)));
    told("hostile", new VersionSpan(3, VersionSpan.OPEN, hostile));
    given(people.nameOf(MEMBER)).willReturn(script);
    Document page = page("/history/change/hostile");
    assertThat(page.select("main script, title script")).isEmpty();
    assertThat(page.select("h1").text()).contains(script);
    assertThat(page.select(".history").text()).contains("Proposed by " + script);
  }

  private void told(String key, VersionSpan... spans) {
    given(history.of(ref(key).kind(), key)).willReturn(List.of(spans));
  }

  private static EntryRef ref(String key) {
    return EntryRef.of(change(key, 1966, ""));
  }

  private static Change change(String key, int year, String locator) {
    Change cited =
        Sample.change(
            key, "door-latch", "rotary", new CutIn("la-2", false, year, year, null, null, null));
    return new Change(
        cited.key(),
        cited.feature(),
        cited.title(),
        null,
        cited.offering(),
        cited.cutIns(),
        List.of(new Citation(key + "-cited", null, "parts-book", locator, Stance.SUPPORTS, null)));
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
