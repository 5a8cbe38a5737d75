package club.yearline.groundschool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import club.yearline.accounts.AccountClosed;
import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.accounts.WholeApplication;
import club.yearline.catalog.Edition;
import club.yearline.catalog.EntryRef;
import club.yearline.catalog.Publication;
import club.yearline.catalog.Snapshots;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.EntryKind;
import club.yearline.testing.Sample;
import club.yearline.testing.SignedIn;
import java.util.List;
import java.util.Objects;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.context.TestPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;

/** Kept hand-outs, with what changed since they were kept. */
@WholeApplication
@TestPropertySource(properties = "start.of=saved-hand-outs")
class SavedHandoutsTest {

  @Autowired MockMvc mvc;
  @Autowired ApplicationContext context;
  @Autowired Publication publication;
  @Autowired Snapshots snapshots;
  @Autowired SavedHandouts saved;

  private Actor teacher;

  @BeforeEach
  void someCatalogueAndATeacher() {
    if (snapshots.head().number() == 0) {
      publication.publish(Edition.of("first", null, Sample.turnstone()));
    }
    teacher = SignedIn.person(context, "Tea Cher", Role.MEMBER);
    saved.removeAll(teacher.id());
  }

  @Test
  void opensAtItsRevisionAndIsBroughtUpToDateOnceTheDifferencesWereSeen() throws Exception {
    int then = snapshots.head().number();
    String kept = keep("door-latch");
    assertThat(page(kept).text()).contains("It is at the newest revision.");
    moveTheLatch(1967);
    int now = snapshots.head().number();
    Document page = page(kept);
    assertThat(page.select("tbody th").eachText()).contains("Feature door-latch");
    assertThat(page.select(".plate + .actions a").first().attr("href")).endsWith("&rev=" + then);
    post(kept + "/renew", "to", "" + then, 422);
    assertThat(only().revision()).isEqualTo(then);
    post(kept + "/renew", "to", "" + now, 302);
    assertThat(only().revision()).isEqualTo(now);
    assertThat(page(kept).text()).contains("It is at the newest revision.");
  }

  @Test
  void saysWhereAFeatureHasGone() throws Exception {
    publication.publish(Edition.of("fewer", null, List.of(Sample.choice("passing", "a"))));
    String kept = keep("passing");
    publication.publish(
        Edition.of("gone", null, List.of())
            .withdrawing(List.of(new EntryRef(EntryKind.FEATURE, "passing"))));
    Document page = page(kept);
    assertThat(page.select(".faults").text()).contains("has no feature “passing”");
    assertThat(page.select("form[action$=renew]")).isEmpty();
    post(kept + "/renew", "to", "" + snapshots.head().number(), 422);
  }

  @Test
  void nobodyElseSeesOrTouchesIt() throws Exception {
    String kept = keep("door-latch");
    Actor other = SignedIn.person(context, "Ot Her", Role.KEEPER);
    mvc.perform(get(kept).with(SignedIn.as(other))).andExpect(status().isNotFound());
    mvc.perform(MockMvcRequestBuilders.post(kept + "/delete").with(SignedIn.as(other)).with(csrf()))
        .andExpect(status().isNotFound());
    assertThat(saved.of(teacher.id())).hasSize(1);
    for (String nonsense : List.of("x", "-1", "9".repeat(30), "999999")) {
      mvc.perform(get("/ground-school/saved/" + nonsense).with(SignedIn.as(teacher)))
          .andExpect(status().isNotFound());
    }
  }

  @Test
  void keepsNothingThatCannotBeMade() throws Exception {
    post("/ground-school/saved", "f", "none", 422);
    post("/ground-school/saved", "title", "no feature", 422);
    assertThat(saved.of(teacher.id())).isEmpty();
  }

  @Test
  void keepsTheLongestRemarksWhateverTheirSigns() throws Exception {
    String remarks = "ß\n&=#+%<b>".repeat(200);
    String kept =
        Objects.requireNonNull(
            mvc.perform(
                    MockMvcRequestBuilders.post("/ground-school/saved")
                        .param("f", "door-latch")
                        .param("remarks", remarks)
                        .with(SignedIn.as(teacher))
                        .with(csrf()))
                .andExpect(status().isFound())
                .andReturn()
                .getResponse()
                .getRedirectedUrl());
    assertThat(kept).startsWith("/ground-school/saved/");
    assertThat(only().choice().remarks()).isEqualTo(remarks.strip());
  }

  @Test
  void goesWithTheAccount() throws Exception {
    keep("door-latch");
    context.publishEvent(new AccountClosed(teacher.id()));
    assertThat(saved.of(teacher.id())).isEmpty();
  }

  private void moveTheLatch(int year) {
    List<Entry> entries =
        snapshots.head().catalogue().changesOf("door-latch").stream()
            .filter(c -> c.cutIns().stream().noneMatch(CutIn::atStart))
            .limit(1)
            .<Entry>map(
                c ->
                    new Change(
                        c.key(),
                        c.feature(),
                        c.title(),
                        c.detail(),
                        c.offering(),
                        List.of(Sample.fromYear("la-2b", year)),
                        c.citations()))
            .toList();
    publication.publish(Edition.of("moved", null, entries));
  }

  private SavedHandout only() {
    List<SavedHandout> all = saved.of(teacher.id());
    assertThat(all).hasSize(1);
    return all.get(0);
  }

  private String keep(String feature) throws Exception {
    return Objects.requireNonNull(post("/ground-school/saved", "f", feature, 302));
  }

  private String post(String path, String name, String value, int expected) throws Exception {
    return mvc.perform(
            MockMvcRequestBuilders.post(path)
                .param(name, value)
                .with(SignedIn.as(teacher))
                .with(csrf()))
        .andExpect(status().is(expected))
        .andReturn()
        .getResponse()
        .getRedirectedUrl();
  }

  private Document page(String path) throws Exception {
    return Jsoup.parse(
        mvc.perform(get(path).with(SignedIn.as(teacher)))
            .andExpect(status().isOk())
            .andReturn()
            .getResponse()
            .getContentAsString());
  }
}
