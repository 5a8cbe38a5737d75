package club.yearline.browse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.BDDMockito.given;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import club.yearline.accounts.People;
import club.yearline.accounts.SecurityConfiguration;
import club.yearline.catalog.Chapters;
import club.yearline.catalog.Contributor;
import club.yearline.catalog.Contributors;
import club.yearline.catalog.FindingsOf;
import club.yearline.catalog.History;
import club.yearline.catalog.ImpactOf;
import club.yearline.catalog.Revision;
import club.yearline.catalog.Snapshot;
import club.yearline.catalog.Snapshots;
import club.yearline.catalog.VersionSpan;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.EntryKind;
import club.yearline.effectivity.Records;
import club.yearline.effectivity.Variant;
import club.yearline.testing.Sample;
import club.yearline.testing.SmallCatalogue;
import club.yearline.web.Phrases;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.webmvc.test.autoconfigure.WebMvcTest;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.bean.override.mockito.MockitoBean;
import org.springframework.test.web.servlet.MockMvc;

@WebMvcTest({FeaturePages.class, ChangePages.class, SourcePages.class, RevisionPages.class})
@Import({
  SecurityConfiguration.class,
  FeatureViews.class,
  ChangeViews.class,
  SourceViews.class,
  DifferenceViews.class,
  Between.class,
  ImpactOf.class,
  FindingsOf.class,
  RecordTexts.class,
  RecordSections.class,
  Wording.class,
  Phrases.class,
  Chapters.class,
  Contributors.class
})
class RecordPagesTest {

  private static final Catalogue SMALL = Catalogue.of(SmallCatalogue.records());

  @Autowired MockMvc mvc;
  @MockitoBean Snapshots snapshots;
  @MockitoBean History history;
  @MockitoBean People people;

  @BeforeEach
  void publishTwoRevisions() {
    publish(SMALL, SMALL.next(SmallCatalogue.records()));
  }

  private void publish(Catalogue... catalogues) {
    List<Revision> revisions = new ArrayList<>();
    for (int i = 0; i < catalogues.length; i++) {
      Revision revision =
          new Revision(
              i + 1,
              Instant.parse("2026-03-0" + (i + 1) + "T10:15:30Z"),
              "Note " + (i + 1),
              Contributor.named("ada"),
              Contributor.named(i == 0 ? "ada" : "bo"));
      Snapshot snapshot = new Snapshot(revision, catalogues[i]);
      given(snapshots.at(i + 1)).willReturn(snapshot);
      given(snapshots.head()).willReturn(snapshot);
      revisions.add(0, revision);
    }
    given(snapshots.revisions()).willReturn(revisions);
  }

  @Test
  void showsAFeatureWithItsValuesDrawingTableAndChanges() throws Exception {
    Document page = page("/features/door-latch");
    assertThat(page.title()).isEqualTo("Door latch · Yearline");
    assertThat(page.select(".stamps").text()).contains("52 Doors", "from close by");
    Element picture = page.selectFirst(".pictures img");
    assertThat(picture.attr("src")).isEqualTo("/pictures/" + "b".repeat(64) + "/latch.svg");
    assertThat(picture.attr("alt")).isEqualTo("Picture: rotary latch");
    assertThat(page.select(".timeline svg a")).hasSize(4);
    assertThat(page.select("details tbody tr").eachText())
        .anyMatch(t -> t.contains("LA-2") && t.contains("1957, LT-0011 to LT-0014"))
        .anyMatch(t -> t.contains("1957, LT-0015 to LT-0020") && t.contains("rotary latch"));
    assertThat(page.select(".change-list h3").eachText())
        .containsExactly("Change latch-start", "Change latch-rotary", "Change latch-a");
    assertThat(page.select(".change-list").text()).contains("LA-2 from serial LT-0015 on");
    assertThat(page.text()).contains("Kit SK-52-01", "1956 to 1957");
    assertThat(page.select(".caution")).hasSize(1);
  }

  @Test
  void drawsNoTwoThingsUnderOneId() throws Exception {
    List<String> ids = page("/features/door-latch").select("[id]").eachAttr("id");
    assertThat(ids).doesNotHaveDuplicates();
  }

  @Test
  void showsFiguresAsStepsAndAYearlessBlockInTheTable() throws Exception {
    Document page = page("/features/power");
    assertThat(page.select(".timeline .key")).isEmpty();
    assertThat(page.select("details tbody tr").eachText())
        .anyMatch(t -> t.contains("year not known, 31 to 40") && t.contains("108.50"));
  }

  @Test
  void showsOneFamilyAloneWhereThatIsAsked() throws Exception {
    Document page = page("/features/power?family=whimbrel");
    assertThat(page.select(".timeline .name").eachText()).containsExactly("LA-5");
    assertThat(page.select(".family-choice a").eachAttr("href"))
        .containsExactly("/features/power?family=turnstone");
  }

  @Test
  void showsOneFamilyAtATimeWhereAllWouldBeTooMany() throws Exception {
    List<Entry> entries = new ArrayList<>();
    List<CutIn> everywhere = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      String family = i % 2 == 0 ? "even" : "odd";
      entries.add(Sample.variant("v" + i, family, 1960, 1968));
      everywhere.add(CutIn.atStart("v" + i));
    }
    entries.addAll(List.of(Sample.family("even"), Sample.family("odd")));
    entries.add(Sample.source("parts-book"));
    entries.add(Sample.choice("fin", "round"));
    entries.add(Sample.change("fin-round", "fin", "round", everywhere.toArray(CutIn[]::new)));
    publish(catalogue(entries));
    Document page = page("/features/fin");
    assertThat(page.select(".timeline .name")).hasSize(20);
    assertThat(page.select(".family-choice li").eachText())
        .containsExactly("Family even", "Family odd");
  }

  @Test
  void showsAChangeWithBothAxesNeighboursAndWhatIsDoubtful() throws Exception {
    Document page = page("/changes/latch-rotary");
    assertThat(page.select("tbody tr").text())
        .contains("from serial LT-0015 on", "LT-0015 … LT-0015", "Change latch-start");
    assertThat(page.text()).contains("No source is recorded.", "No source supports it.");
    assertThat(page.select("[href=/changes/latch-start]")).isNotEmpty();
  }

  @Test
  void showsWhoDisputesAChange() throws Exception {
    Document page = page("/changes/light-nose");
    assertThat(page.select(".citations .is-against").text())
        .contains("against", "High wing over Halvik", "p. 12");
    assertThat(page.select(".plate .is-disputed")).hasSize(1);
  }

  @Test
  void showsWhatEachVersionOfAChangeSaid() throws Exception {
    Change now = SMALL.change("latch-rotary").orElseThrow();
    Change was =
        new Change(
            now.key(), now.feature(), "Old title", null, now.offering(), now.cutIns(), List.of());
    given(history.of(EntryKind.CHANGE, "latch-rotary"))
        .willReturn(List.of(new VersionSpan(1, 2, was), new VersionSpan(2, VersionSpan.OPEN, now)));
    Element versions = page("/changes/latch-rotary").selectFirst("ol[reversed]");
    assertThat(versions.select("del").text()).contains("Old title");
    assertThat(versions.select("ins").text()).contains("Change latch-rotary");
    assertThat(versions.select("[href=/revisions/2]")).isNotEmpty();
    assertThat(page("/changes/latch-rotary?rev=1").select("ol[reversed] > li")).hasSize(1);
  }

  @Test
  void listsSourcesByKindWithWhatEachSupportsAndDisputes() throws Exception {
    Document page = page("/sources");
    assertThat(page.select("h2").eachText()).containsExactly("Maintenance manuals", "Books");
    assertThat(page.select("tbody tr").eachText())
        .anyMatch(t -> t.contains("LA-MM-2") && t.endsWith("5 0"))
        .anyMatch(t -> t.startsWith("High wing over Halvik") && t.endsWith("0 1"));
  }

  @Test
  void listsEverythingThatCitesASource() throws Exception {
    Document page = page("/sources/manual");
    assertThat(page.select("[href=/changes/latch-start]").text())
        .isEqualTo("Door latch: Change latch-start");
    assertThat(page.select("[href=/variants/la-2]")).isNotEmpty();
    assertThat(page.text()).contains("2-14");
    assertThat(page("/sources/book").select(".is-against")).hasSize(1);
  }

  @Test
  void listsRevisionsNewestFirst() throws Exception {
    Document page = page("/revisions");
    assertThat(page.select("ol[reversed] > li a").eachText())
        .containsExactly("Revision 2", "Revision 1");
    assertThat(page.text())
        .contains("2026-03-02 10:15Z", "Note 2", "Proposed by ada, approved by bo");
    assertThat(page.select("form[action=/revisions/compare] [name=from]").val()).isEqualTo("1");
  }

  @Test
  void tellsWhatARevisionEditedAndWhichAnswersChanged() throws Exception {
    Change later =
        Sample.change("door-latch-rotary", "door-latch", "rotary", Sample.fromYear("la-2b", 1967));
    publish(catalogue(Sample.turnstone()), catalogue(Sample.with(Sample.turnstone(), later)));
    Document page = page("/revisions/2");
    assertThat(page.select("del").text()).contains("from 1966 on");
    assertThat(page.select("ins").text()).contains("from 1967 on");
    assertThat(page.select(".edit").text()).isEqualTo("changed");
    assertThat(page.select("tbody tr").text())
        .contains("1966", "LT-0201 to LT-0300", "100 airframes", "the rotary", "the sliding");
    assertThat(page.select("tbody [href=/features/door-latch?rev=2]")).isNotEmpty();
    assertThat(page.select(".redrawn .label").eachText()).containsExactly("Before", "After");
    assertThat(page.select(".redrawn svg[role=group] title[id]").eachText())
        .containsExactly(
            "Before: Feature door-latch through the years",
            "After: Feature door-latch through the years");
    assertThat(page.select(".redrawn [role=img]:not([href])").eachAttr("aria-label"))
        .anyMatch(words -> words.contains("1964 to 1966") && words.contains("the sliding"));
    assertThat(page.select("[id]").eachAttr("id")).doesNotHaveDuplicates();
  }

  @Test
  void saysThatEverythingIsNewInTheFirstPublication() throws Exception {
    Document page = page("/revisions/1");
    assertThat(page.text()).contains("There was nothing before", "Changes 8 added");
    assertThat(page.select("table, .redrawn")).isEmpty();
  }

  @Test
  void comparesBackwardsToo() throws Exception {
    publish(catalogue(Sample.turnstone()), catalogue(without("door-latch-rotary")));
    assertThat(page("/revisions/compare?from=1&to=2").select(".edit").text())
        .isEqualTo("withdrawn");
    Document back = page("/revisions/compare?from=2&to=1");
    assertThat(back.select("h1").text()).isEqualTo("Revision 2 to 1");
    assertThat(back.select(".edit").text()).isEqualTo("added");
  }

  @Test
  void saysThatNothingDiffersBetweenARevisionAndItself() throws Exception {
    assertThat(page("/revisions/compare?from=2&to=2").select(".empty").eachText())
        .anyMatch(t -> t.startsWith("No entry reads differently"))
        .anyMatch(t -> t.startsWith("No answer changed"));
  }

  @Test
  void showsTheFormAloneWhileNothingIsAsked() throws Exception {
    Document page = page("/revisions/compare");
    assertThat(page.select("form.compare-form")).hasSize(1);
    assertThat(page.select("#edits")).isEmpty();
  }

  @Test
  void foldsALargeImpactAndShowsOneVariantPageByPage() throws Exception {
    List<Entry> before = new ArrayList<>(Sample.turnstone());
    List<Entry> after = new ArrayList<>(before);
    for (int i = 0; i < 200; i++) {
      after.add(Sample.choice("f" + i, "a"));
      after.add(Sample.change("c" + i, "f" + i, "a", CutIn.atStart("la-2b")));
    }
    publish(catalogue(before), catalogue(after));
    Document page = page("/revisions/2");
    assertThat(page.select("tbody tr")).hasSize(ImpactViews.SHOWN);
    Element more = page.selectFirst("[href=/revisions/2?variant=la-2b]");
    assertThat(more).isNotNull();
    assertThat(page.text()).contains("140 more are not shown here");
    Document only = page("/revisions/2?variant=la-2b&page=2");
    assertThat(only.select("tbody tr")).hasSize(ImpactViews.SHOWN);
    assertThat(only.select(".pages a[rel=next]").attr("href"))
        .isEqualTo("/revisions/2?variant=la-2b&page=3");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/features/door-latch",
        "/features/power",
        "/changes/latch-rotary",
        "/sources",
        "/sources/manual"
      })
  void keepsTheRevisionOnEveryLinkToARecord(String path) throws Exception {
    Document page = page(path + "?rev=1");
    assertThat(
            page.select("main a[href^=/]:not(.correct [rel=nofollow]), .crumbs a[href]")
                .eachAttr("href"))
        .isNotEmpty()
        .allMatch(href -> href.contains("rev=1"));
    assertThat(page.select(".past")).hasSize(1);
    assertThat(page(path).select(".past")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "/features/none, No feature has the key “none”",
    "/features/power?family=none, for any variant of “none”",
    "/changes/none, No change has the key “none”",
    "/sources/none, No source has the key “none”",
    "/revisions/9, Revision 9 was never published",
    "/revisions/2?variant=none, no answer for “none” differs",
  })
  void refusesWhatDoesNotExistAndSaysWhatToDo(String path, String text) throws Exception {
    String html =
        mvc.perform(get(path))
            .andExpect(status().isNotFound())
            .andReturn()
            .getResponse()
            .getContentAsString();
    assertThat(Jsoup.parse(html).select("main").text()).contains(text, "What to do");
  }

  @Test
  void escapesWhateverARecordSays() throws Exception {
    List<Entry> entries = new ArrayList<>(Sample.turnstone());
    String script = SmallCatalogue.SCRIPT;
    Change hostile =
        new Change(
            "door-latch-rotary",
            "door-latch",
            script,
            script,
            SMALL.change("latch-rotary").orElseThrow().offering(),
            List.of(Sample.fromYear("la-2b", 1966)),
            List.of(Sample.citation("x", "parts-book")));
    Variant variant = Sample.variant("la-2b", "turnstone", 1964, 1968);
    Variant named =
        new Variant(
            variant.key(),
            variant.family(),
            script,
            null,
            script,
            List.of(),
            variant.runs(),
            List.of(),
            List.of());
    publish(catalogue(entries), catalogue(Sample.with(entries, hostile, named)));
    for (String path :
        List.of(
            "/features/door-latch",
            "/changes/door-latch-rotary",
            "/sources/parts-book",
            "/revisions/2")) {
      Document page = page(path);
      assertThat(page.select("main script")).as(path).isEmpty();
      assertThat(page.text()).as(path).contains(script);
    }
  }

  @Test
  void saysWhatToDoWhereNothingIsPublished() throws Exception {
    given(snapshots.head()).willReturn(new Snapshot(Revision.NONE, Catalogue.EMPTY));
    given(snapshots.revisions()).willReturn(List.of());
    assertThat(page("/sources").select(".empty").text()).contains("No sources are recorded.");
    assertThat(page("/revisions").select(".empty").text()).contains("Nothing is published yet.");
  }

  @Test
  void staysLight() throws Exception {
    for (String path : List.of("/features/door-latch", "/sources", "/revisions/1")) {
      assertThat(html(path).length()).as(path).isLessThan(150_000);
    }
  }

  private static List<Entry> without(String change) {
    return Sample.turnstone().stream().filter(e -> !e.key().equals(change)).toList();
  }

  private static Catalogue catalogue(List<Entry> entries) {
    return Catalogue.of(Records.of(entries, List.of()));
  }

  private Document page(String path) throws Exception {
    return Jsoup.parse(html(path));
  }

  private String html(String path) throws Exception {
    return mvc.perform(get(path))
        .andExpect(status().isOk())
        .andReturn()
        .getResponse()
        .getContentAsString();
  }
}
