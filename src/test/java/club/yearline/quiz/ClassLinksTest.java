package club.yearline.quiz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import club.yearline.accounts.AccountClosed;
import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.accounts.WholeApplication;
import club.yearline.catalog.Edition;
import club.yearline.catalog.Publication;
import club.yearline.catalog.Snapshots;
import club.yearline.testing.Sample;
import club.yearline.testing.SignedIn;
import java.net.URI;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.context.TestPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/**
 * A class takes a quiz by its link, from making the link to its end. On a database of its own: what
 * is published here would be there for tests that count rows.
 */
@WholeApplication
@TestPropertySource(properties = "quiz.database=own")
class ClassLinksTest {

  private static final String CHOICE = "family=turnstone&count=3&number=8&rev=1";
  private static final String CLASS = "/ground-school/quiz/class/";

  @Autowired ApplicationContext context;
  @Autowired MockMvc mvc;
  @Autowired Publication publication;
  @Autowired Snapshots snapshots;
  @Autowired JdbcClient jdbc;

  private Actor instructor;

  @BeforeEach
  void publish() {
    instructor = SignedIn.person(context, "Ida Instructor", Role.MEMBER);
    if (snapshots.head().number() == 0) {
      publication.publish(Edition.of("Published", null, Sample.turnstone()));
    }
    jdbc.sql("delete from quiz_link").update();
  }

  @AfterEach
  void openTheCatalogue() throws Exception {
    close(false);
  }

  @Test
  void whereTheCatalogueIsClosedTheLinkOpensItsQuizAndNothingElse() throws Exception {
    String path = made();
    close(true);
    MockHttpServletResponse quiz = visit(path);
    assertThat(quiz.getStatus()).isEqualTo(200);
    assertThat(read(quiz).select("form.quiz fieldset")).hasSize(3);
    Document results = read(visit(path + "?done=1&a1=a&a2=a&a3=a"));
    assertThat(results.select("#score").text()).endsWith("of 3 right");
    assertThat(results.select("main a[href*=/expected], main a[href*=/sources]")).isEmpty();
    assertThat(results.select(".quiz-why li")).isNotEmpty();
    for (String other :
        new String[] {
          "/families/turnstone", "/ground-school/quiz", "/ground-school/quiz/take?" + CHOICE
        }) {
      assertThat(visit(other).getRedirectedUrl()).as(other).startsWith("/sign-in");
    }
    close(false);
    assertThat(read(visit(path + "?done=1")).select("main a[href*=/expected]")).isNotEmpty();
  }

  @Test
  void theLinkItselfIsStoredNowhere() throws Exception {
    String secret = made().substring(CLASS.length());
    assertThat(secret).hasSizeGreaterThan(40);
    String row = jdbc.sql("select * from quiz_link").query().singleRow().values().toString();
    assertThat(row).doesNotContain(secret);
  }

  @Test
  void theLinkIsListedAndTakenAwayByWhoMadeItOnly() throws Exception {
    String path = made();
    long id = jdbc.sql("select id from quiz_link").query(Long.class).single();
    assertThat(read(as(instructor, get("/ground-school/quiz"))).select("#classes li").text())
        .contains("Number 8", "3 questions", "revision 1");
    Actor other = SignedIn.person(context, "Odd Other", Role.KEEPER);
    String revoke = "/ground-school/quiz/links/" + id + "/revoke";
    assertThat(as(other, post(revoke).with(csrf())).getStatus()).isEqualTo(404);
    assertThat(visit(path).getStatus()).isEqualTo(200);
    assertThat(as(instructor, post(revoke).with(csrf())).getRedirectedUrl())
        .isEqualTo("/ground-school/quiz#classes");
    assertThat(visit(path).getStatus()).isEqualTo(404);
  }

  @Test
  void afterItsLastDayTheLinkIsOver() throws Exception {
    String path = made();
    jdbc.sql("update quiz_link set last_day = :day")
        .param("day", QuizLinkController.today().minusDays(1))
        .update();
    assertThat(visit(path).getStatus()).isEqualTo(410);
  }

  @Test
  void theLinksOfAPersonGoWithTheAccount() throws Exception {
    String path = made();
    context.publishEvent(new AccountClosed(instructor.id()));
    assertThat(visit(path).getStatus()).isEqualTo(404);
  }

  private String made() throws Exception {
    String until = "&until=" + QuizLinkController.today();
    MockHttpServletResponse made =
        as(
            instructor,
            post(URI.create("/ground-school/quiz/links?" + CHOICE + until)).with(csrf()));
    assertThat(made.getStatus()).isEqualTo(200);
    String link = read(made).select("#link").text();
    return link.substring(link.indexOf(CLASS));
  }

  private void close(boolean closed) throws Exception {
    Actor keeper = SignedIn.person(context, "Kari Keeper", Role.KEEPER);
    Document form = read(as(keeper, get("/admin/settings")));
    MockHttpServletRequestBuilder send =
        post("/admin/settings")
            .with(csrf())
            .param("name", "The club")
            .param("logDays", "30")
            .param("version", form.select("[name=version]").val());
    if (closed) {
      send.param("closed", "on");
    }
    assertThat(as(keeper, send).getStatus()).isEqualTo(302);
  }

  private MockHttpServletResponse visit(String address) throws Exception {
    return mvc.perform(get(URI.create(address))).andReturn().getResponse();
  }

  private MockHttpServletResponse as(Actor who, MockHttpServletRequestBuilder request)
      throws Exception {
    return mvc.perform(request.with(SignedIn.as(who))).andReturn().getResponse();
  }

  private static Document read(MockHttpServletResponse response) throws Exception {
    return Jsoup.parse(response.getContentAsString());
  }
}
