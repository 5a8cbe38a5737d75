package club.yearline.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.catalog.Edition;
import club.yearline.catalog.Publication;
import club.yearline.catalog.Snapshots;
import club.yearline.testing.Sample;
import club.yearline.testing.SignedIn;
import club.yearline.uploads.Shots;
import java.awt.image.BufferedImage;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.context.TestPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.MockMultipartHttpServletRequestBuilder;

/** How tests of the register's pages speak: some people, and an empty register over one family. */
// Read by nobody: it keeps the start, and so its catalogue, from being shared with other tests.
@TestPropertySource(properties = "start.of=register")
abstract class RegisterDesk {

  @Autowired ApplicationContext context;
  @Autowired MockMvc mvc;
  @Autowired Publication publication;
  @Autowired Snapshots snapshots;
  @Autowired JdbcClient jdbc;

  Actor owner;
  Actor other;
  Actor moderator;
  Actor keeper;

  @BeforeEach
  void nobodyHasRegisteredAnything() {
    owner = SignedIn.person(context, "Mette Member", Role.MEMBER);
    other = SignedIn.person(context, "Odd Other", Role.MEMBER);
    moderator = SignedIn.person(context, "Mona Moderator", Role.MODERATOR);
    keeper = SignedIn.person(context, "Kari Keeper", Role.KEEPER);
    if (snapshots.head().number() == 0) {
      publication.publish(Edition.of("Published", "Å", Sample.turnstone()));
    }
    jdbc.sql("delete from airframe").update();
  }

  long count(String table) {
    return jdbc.sql("select count(*) from " + table).query(Long.class).single();
  }

  static MockMultipartFile photograph(int width) {
    byte[] bytes = Shots.file(Shots.quarters(width, 8, BufferedImage.TYPE_INT_RGB), "png");
    return new MockMultipartFile("photographs", width + ".png", "image/png", bytes);
  }

  String photographOf(String page) {
    return page
        + "/photographs/"
        + jdbc.sql("select id from photograph").query(Long.class).single();
  }

  MockHttpServletResponse fetch(Actor actor, String path) throws Exception {
    return mvc.perform(get(path).with(SignedIn.as(actor))).andReturn().getResponse();
  }

  String body(Actor actor, String path) throws Exception {
    MockHttpServletResponse answer = fetch(actor, path);
    assertThat(answer.getStatus()).as(path).isEqualTo(200);
    return answer.getContentAsString();
  }

  MockHttpServletResponse send(
      Actor actor, MockHttpServletRequestBuilder request, Map<String, String> typed)
      throws Exception {
    typed.forEach(request::param);
    return mvc.perform(request.with(SignedIn.as(actor)).with(csrf())).andReturn().getResponse();
  }

  String register(Actor actor, Map<String, String> typed) throws Exception {
    MockHttpServletResponse answer = send(actor, post("/fleet"), typed);
    assertThat(answer.getStatus()).as(answer.getContentAsString()).isEqualTo(302);
    return answer.getRedirectedUrl();
  }

  void share(String page) throws Exception {
    share(owner, page);
  }

  void share(Actor actor, String page) throws Exception {
    assertThat(send(actor, post(page + "/share"), Map.of("shared", "true")).getStatus())
        .isEqualTo(302);
  }

  void observe(String page, Map<String, String> typed, MockMultipartFile... photographs)
      throws Exception {
    assertThat(observing(owner, page, typed, photographs).getRedirectedUrl())
        .isEqualTo(page + "#f-door-latch");
  }

  MockHttpServletResponse observing(
      Actor actor, String page, Map<String, String> typed, MockMultipartFile... photographs)
      throws Exception {
    Map<String, String> form = new LinkedHashMap<>();
    form.put("feature", "door-latch");
    form.put("value", "rotary");
    form.put("on", "2026-05-31");
    form.putAll(typed);
    MockMultipartHttpServletRequestBuilder request = multipart(page + "/observations");
    for (MockMultipartFile photograph : photographs) {
      request.file(photograph);
    }
    form.forEach(request::param);
    return mvc.perform(request.with(SignedIn.as(actor)).with(csrf())).andReturn().getResponse();
  }

  static void assertFault(MockHttpServletResponse answer, String field) throws Exception {
    assertThat(answer.getStatus()).isEqualTo(422);
    assertThat(Jsoup.parse(answer.getContentAsString()).selectFirst("#" + field + "-fault"))
        .isNotNull();
  }
}
