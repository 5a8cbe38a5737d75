package club.yearline.quiz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyInt;
import static org.mockito.ArgumentMatchers.anyLong;
import static org.mockito.ArgumentMatchers.anyString;
import static org.mockito.ArgumentMatchers.eq;
import static org.mockito.BDDMockito.given;
import static org.mockito.Mockito.never;
import static org.mockito.Mockito.verify;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import club.yearline.accounts.Addresses;
import club.yearline.accounts.Role;
import club.yearline.accounts.SecurityConfiguration;
import club.yearline.accounts.Throttle;
import club.yearline.accounts.VisitorPace;
import club.yearline.catalog.Chapters;
import club.yearline.catalog.Contributor;
import club.yearline.catalog.Pictures;
import club.yearline.catalog.Revision;
import club.yearline.catalog.Snapshot;
import club.yearline.catalog.Snapshots;
import club.yearline.catalog.StoredPicture;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Catalogue;
import club.yearline.exchange.DemoRecords;
import club.yearline.testing.SignedIn;
import club.yearline.web.Phrases;
import java.io.UnsupportedEncodingException;
import java.net.URI;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
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
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** Quizzes over the demo at revision 3, and the links of classes. */
@WebMvcTest({QuizController.class, QuizLinkController.class, QuizClassController.class})
@Import({
  SecurityConfiguration.class,
  Quizzes.class,
  QuizViews.class,
  QuizPage.class,
  QuizWords.class,
  Solutions.class,
  VisitorPace.class,
  Throttle.class,
  Addresses.class,
  Phrases.class,
  Chapters.class,
  Wording.class
})
class QuizPagesTest {

  private static final Snapshot SNAPSHOT =
      new Snapshot(
          new Revision(
              3, Instant.ofEpochSecond(86_400), "note", Contributor.NOBODY, Contributor.NOBODY),
          Catalogue.of(DemoRecords.read()));

  private static final String CHOICE = "family=turnstone&count=12&number=4711";
  private static final String QUIZ = "/ground-school/quiz/take?" + CHOICE + "&rev=3";
  private static final String CLASS = "/ground-school/quiz/class/secret";

  @Autowired MockMvcTester web;
  @MockitoBean Snapshots snapshots;
  @MockitoBean Pictures pictures;
  @MockitoBean QuizLinks links;

  @BeforeEach
  void publish() {
    given(snapshots.head()).willReturn(SNAPSHOT);
    given(snapshots.at(3)).willReturn(SNAPSHOT);
    given(pictures.find(anyString()))
        .willReturn(Optional.of(new StoredPicture("image/svg+xml", new byte[] {60})));
    given(links.add(anyLong(), any(), anyInt(), any())).willReturn("fresh-secret");
    given(links.find("secret")).willReturn(Optional.of(link(QuizLinkController.today())));
    given(links.find("over"))
        .willReturn(Optional.of(link(QuizLinkController.today().minusDays(1))));
  }

  private static QuizLink link(LocalDate lastDay) {
    return new QuizLink(7, 1, Given.read(CHOICE), 3, lastDay);
  }

  @Test
  void offersFamiliesKindsVariantsAndFeatures() {
    Document page = ok("/ground-school/quiz?family=whimbrel");
    assertThat(page.select("[name=kind]")).hasSize(Kind.values().length);
    assertThat(page.select("[name=v]").eachAttr("value")).allMatch(v -> v.startsWith("la-5"));
    assertThat(page.select("[name=ch]")).isNotEmpty();
    assertThat(page.select("[name=f]")).isNotEmpty();
    assertThat(page.select("[name=number]").val()).isEmpty();
  }

  @Test
  void anAddressWithoutNumberOrRevisionIsSentOnToOneThatStays() {
    MvcTestResult sent = get("/ground-school/quiz/take?family=turnstone&count=5");
    assertThat(sent).hasStatus(303);
    String to = Objects.requireNonNull(sent.getResponse().getHeader("Location"));
    assertThat(to).matches(".*family=turnstone&count=5&number=[0-9]{6}&rev=3");
    assertThat(sent.getResponse().getHeader("Cache-Control")).isEqualTo("no-store");
    assertThat(ok(to).select("fieldset")).hasSize(5);
  }

  @Test
  void asksWithoutTellingTheAnswers() {
    Document page = ok(QUIZ);
    assertThat(page.select("form.quiz fieldset")).hasSize(12);
    assertThat(page.select("input[type=radio]").size()).isGreaterThanOrEqualTo(24);
    assertThat(page.select(".quiz-why, .quiz-results, details.print-open")).isEmpty();
    assertThat(page.select("main .caution")).hasSize(1);
    assertThat(page.text()).contains("Number 4711, revision 3", "nothing is stored");
    assertThat(ok(QUIZ).select("form.quiz").html()).isEqualTo(page.select("form.quiz").html());
    String other = ok(QUIZ.replace("4711", "4712")).select("form.quiz legend").text();
    assertThat(other).isNotEqualTo(page.select("form.quiz legend").text());
  }

  @Test
  void tellsWhatWasRightAndWhatWasWrongAndOnWhatSources() {
    Quiz quiz = Quiz.of(SNAPSHOT.catalogue(), selection());
    StringBuilder answers = new StringBuilder(QUIZ + "&done=1");
    for (int i = 0; i < 12; i++) {
      int right = quiz.questions().get(i).right();
      answers.append("&a").append(i + 1).append('=').append((char) ('a' + right));
    }
    assertThat(ok(answers.toString()).select("#score").text()).isEqualTo("12 of 12 right");
    String one = answers.toString().replaceAll("&a1=.", "&a1=z").replaceAll("&a2=.", "");
    Document page = ok(one);
    assertThat(page.select("#score").text()).isEqualTo("10 of 12 right");
    assertThat(page.select("#q1 .quiz-outcome").text()).isEqualTo("Not answered");
    assertThat(page.select("#q3 .quiz-outcome").text()).isEqualTo("Right");
    for (Element line : page.select(".quiz-results > li")) {
      assertThat(line.select("a[href^=/sources/]")).as(line.text()).isNotEmpty();
      assertThat(line.select("a[href^=/expected]").attr("href")).endsWith("rev=3");
    }
  }

  private static Selection selection() {
    return new Selection("turnstone", List.of(), List.of(), List.of(), List.of(), 12, 4711);
  }

  @Test
  void onPaperTheKeyComesLast() {
    Document page = ok(QUIZ + "&paper=1");
    assertThat(page.select("main > ol.quiz-paper > li")).hasSize(12);
    assertThat(page.select("main > ol.quiz-paper .quiz-why")).isEmpty();
    assertThat(page.select(".quiz-key li b")).hasSize(12);
    assertThat(page.select("main > *").last()).isEqualTo(page.selectFirst(".quiz-key"));
    assertThat(page.select("form.quiz, main .caution")).hasSize(1);
  }

  @Test
  void saysHowManyQuestionsTheRecordsBear() {
    Document page =
        ok(
            "/ground-school/quiz/take?family=turnstone&f=fin-shape&count=40&kind=order&number=1&rev=3");
    assertThat(page.select(".notice").text()).contains("the records bear");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "family=nope&count=5 | has no family",
        "family=&count=5 | has no family",
        "family=turnstone&count=0 | no whole number from 1 to 40",
        "family=turnstone&count=41 | no whole number from 1 to 40",
        "family=turnstone&count=99999999999999999999 | no whole number",
        "family=turnstone&count=-3 | no whole number",
        "family=turnstone | no whole number",
        "family=turnstone&count=5&number=1234567890 | no whole number from 0 to 999999999",
        "family=turnstone&count=5&number=x | no whole number",
        "family=turnstone&count=5&v=la-5 | has no variant “la-5” in this family",
        "family=turnstone&count=5&f=nope | has no feature “nope”",
        "family=turnstone&count=5&ch=zz | chapter “zz”",
        "family=turnstone&count=5&kind=riddle | no kind of question “riddle”",
        "family=turnstone&count=5&f=%3Cscript%3E | has no feature",
      })
  void whatCannotBeMadeIsSaidAtItsField(String query, String said) {
    MvcTestResult result = get("/ground-school/quiz/take?" + query);
    assertThat(result).hasStatus(422);
    assertThat(read(result).select(".faults").text()).contains(said);
  }

  @Test
  void fiveHundredFeaturesAreTooMany() {
    StringBuilder query = new StringBuilder("/ground-school/quiz/take?family=turnstone&count=5");
    for (int i = 0; i < 500; i++) {
      query.append("&f=x").append(i);
    }
    MvcTestResult result = get(query.toString());
    assertThat(result).hasStatus(422);
    assertThat(read(result).select(".faults").text()).contains("500 are chosen; 60 are taken");
  }

  @Test
  void aMemberMakesALinkThatIsShownOnce() {
    MvcTestResult made = make("until=" + QuizLinkController.today().plusDays(3));
    assertThat(made).hasStatusOk();
    assertThat(read(made).select("#link").text())
        .endsWith("/ground-school/quiz/class/fresh-secret");
    assertThat(made.getResponse().getHeader("Cache-Control")).contains("private");
    verify(links)
        .add(anyLong(), eq(Given.read(CHOICE)), eq(3), eq(QuizLinkController.today().plusDays(3)));
  }

  @ParameterizedTest
  @CsvSource({"''", "tomorrow", "1999-01-01", "9999-12-31", "2026-02-31"})
  void aLinkNeedsADayAhead(String until) {
    MvcTestResult made = make("until=" + until);
    assertThat(made).hasStatus(422);
    assertThat(read(made).select("#until-fault").text()).contains("Give a day from");
    verify(links, never()).add(anyLong(), any(), anyInt(), any());
  }

  private MvcTestResult make(String more) {
    return web.post()
        .uri(URI.create("/ground-school/quiz/links?" + CHOICE + "&rev=3&" + more))
        .with(SignedIn.as(Role.MEMBER))
        .with(csrf())
        .exchange();
  }

  @Test
  void aClassTakesTheQuizOfItsLinkAndNoOther() {
    Document page = ok(CLASS + "?family=dotterel&count=40&number=1");
    assertThat(page.select("form.quiz fieldset")).hasSize(12);
    assertThat(page.select("form.quiz legend").text())
        .isEqualTo(ok(QUIZ).select("form.quiz legend").text());
    assertThat(page.select("main img").eachAttr("src"))
        .isNotEmpty()
        .allMatch(src -> src.startsWith(CLASS + "/pictures/"));
    assertThat(page.select("main a[href]")).isEmpty();
    assertThat(ok(CLASS + "?done=1").select("#score").text()).isEqualTo("0 of 12 right");
  }

  @Test
  void aClassSeesThePicturesOfItsQuizAndNoOthers() {
    String src = ok(CLASS).select("main img").attr("src");
    assertThat(get(src)).hasStatusOk();
    assertThat(get(CLASS + "/pictures/" + "0".repeat(64))).hasStatus(404);
    assertThat(get(src.replace("/secret/", "/over/"))).hasStatus(410);
  }

  @Test
  void aLinkThatIsOverOrUnknownSaysSo() {
    MvcTestResult over = get("/ground-school/quiz/class/over");
    assertThat(over).hasStatus(410);
    assertThat(read(over).text()).contains("This link is over", "Ask your instructor");
    MvcTestResult unknown = get("/ground-school/quiz/class/%3Cjunk%3E");
    assertThat(unknown).hasStatus(404);
    assertThat(read(unknown).text()).contains("There is no such link");
  }

  private Document ok(String address) {
    MvcTestResult result = get(address);
    assertThat(result).as(address).hasStatusOk();
    return read(result);
  }

  private MvcTestResult get(String address) {
    return web.get().uri(URI.create(address)).exchange();
  }

  private static Document read(MvcTestResult result) {
    try {
      return Jsoup.parse(result.getResponse().getContentAsString());
    } catch (UnsupportedEncodingException e) {
      throw new IllegalStateException(e);
    }
  }
}
