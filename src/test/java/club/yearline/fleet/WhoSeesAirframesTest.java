package club.yearline.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import club.yearline.accounts.Actor;
import club.yearline.accounts.WholeApplication;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.context.TestPropertySource;

/** Who sees and changes airframes, and who finds them. */
@WholeApplication
@TestPropertySource(properties = "start.of=register")
class WhoSeesAirframesTest extends RegisterDesk {

  // Who sees what

  @Test
  void aPrivateAirframeIsNobodysButItsOwnersWhateverTheirRole() throws Exception {
    String page = register(owner, Map.of("serial", "LT-0042", "registration", "QZ-1"));
    observe(page, Map.of(), photograph(8));
    String photograph = photographOf(page);
    for (Actor actor : List.of(other, moderator, keeper)) {
      for (String path :
          List.of(page, page + "/edit", page + "/delete", page + "/observe", photograph)) {
        assertThat(fetch(actor, path).getStatus()).as(path).isEqualTo(404);
      }
      assertThat(fetch(actor, photograph + "/small").getStatus()).isEqualTo(404);
      assertThat(body(actor, "/fleet")).doesNotContain("LT-0042");
      assertChangesNothing(actor, page, 404);
    }
    assertThat(count("airframe")).isEqualTo(1);
    assertThat(refusal(other, "/fleet/999999").replace("999999", "#"))
        .as("what is hidden looks as what is not there")
        .isEqualTo(refusal(other, page).replace(page.substring("/fleet/".length()), "#"));
  }

  private String refusal(Actor actor, String path) throws Exception {
    return Jsoup.parse(fetch(actor, path).getContentAsString()).text();
  }

  @Test
  void aSharedAirframeIsSeenByMembersAndChangedByItsOwnerOnly() throws Exception {
    String page = register(owner, Map.of("serial", "LT-0042"));
    observe(page, Map.of(), photograph(8));
    share(page);
    assertThat(body(other, "/fleet")).contains("LT-0042");
    assertThat(body(other, page)).contains("rotary").doesNotContain("/observations/");
    assertThat(fetch(other, photographOf(page)).getStatus()).isEqualTo(200);
    for (String path : List.of("/edit", "/delete", "/observe")) {
      assertThat(fetch(other, page + path).getStatus()).as(path).isEqualTo(403);
    }
    assertChangesNothing(other, page, 403);
    assertThat(mvc.perform(get(page)).andReturn().getResponse().getRedirectedUrl())
        .startsWith("/sign-in");
  }

  private void assertChangesNothing(Actor actor, String page, int status) throws Exception {
    String observation =
        jdbc.sql("select id from observation").query(Long.class).list().get(0).toString();
    Map<String, String> form =
        Map.of("shared", "false", "shown", "true", "serial", "LT-0043", "version", "0");
    for (String path :
        List.of(
            "/share", "/serial", "/delete", "/edit", "/observations/" + observation + "/remove")) {
      assertThat(send(actor, post(page + path), form).getStatus()).as(path).isEqualTo(status);
    }
    assertThat(observing(actor, page, Map.of()).getStatus()).isEqualTo(status);
    assertThat(count("observation")).isEqualTo(1);
  }

  @Test
  void aPhotographIsOfTheAirframeThatItsAddressNames() throws Exception {
    String page = register(owner, Map.of("serial", "LT-0042"));
    observe(page, Map.of(), photograph(8));
    String hidden = photographOf(page);
    String shared = register(other, Map.of("serial", "LT-0007"));
    share(other, shared);
    String forged = shared + hidden.substring(hidden.indexOf("/photographs"));
    assertThat(fetch(other, forged).getStatus()).isEqualTo(404);
    assertThat(fetch(owner, forged).getStatus()).isEqualTo(404);
  }

  // The box on the first page

  @ParameterizedTest
  @ValueSource(strings = {"QZ-AB1", "qzab1"})
  void theBoxLeadsToAnOwnOrSharedAirframeByItsMark(String typed) throws Exception {
    String page = register(owner, Map.of("serial", "LT-0042", "registration", "QZ-AB1"));
    String box = "/find?q=" + typed;
    assertThat(fetch(owner, box).getRedirectedUrl()).isEqualTo(page);
    for (Actor actor : List.of(other, keeper)) {
      assertThat(body(actor, box)).doesNotContain(page);
    }
    share(page);
    assertThat(fetch(other, box).getRedirectedUrl()).isEqualTo(page);
    MockHttpServletResponse visitor = mvc.perform(get(box)).andReturn().getResponse();
    assertThat(visitor.getContentAsString()).doesNotContain(page).doesNotContain("LT-0042");
    assertThat(body(owner, box + "&rev=1")).doesNotContain(page);
  }

  @Test
  void theBoxOffersAirframesOfOneMarkBesideWhatElseTheTextMayMean() throws Exception {
    String mine = register(owner, Map.of("serial", "LT-0042", "registration", "LT-0043"));
    Document found = Jsoup.parse(body(owner, "/find?q=LT-0043"));
    assertThat(found.select("main .rows a").eachAttr("href")).first().isEqualTo(mine);
    assertThat(found.select("main .rows a")).hasSizeGreaterThan(1);
  }
}
