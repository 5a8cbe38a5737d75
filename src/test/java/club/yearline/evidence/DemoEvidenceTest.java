package club.yearline.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.catalog.Snapshots;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Serial;
import club.yearline.estimation.Bounds;
import club.yearline.estimation.CutInQuestion;
import club.yearline.fleet.Sightings;
import club.yearline.fleet.UsedObservation;
import club.yearline.testing.Database;
import club.yearline.testing.SignedIn;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/**
 * The demo's register against the truths that it is made from, as readers see it: airframes whose
 * serials are not shown stand for ten.
 */
@SpringBootTest
@AutoConfigureMockMvc
class DemoEvidenceTest {

  private static final Path TRUTHS =
      Path.of("src", "main", "resources", "demo", "true-cut-ins.csv");

  @Autowired private MockMvc mvc;
  @Autowired private JdbcClient jdbc;
  @Autowired private ApplicationContext context;
  @Autowired private Snapshots snapshots;
  @Autowired private Sightings sightings;
  @Autowired private Weighing weighing;

  @DynamicPropertySource
  static void settings(DynamicPropertyRegistry registry) {
    Database database = Database.h2();
    registry.add("spring.datasource.url", database::url);
    registry.add("spring.datasource.username", database::user);
    registry.add("spring.datasource.password", database::password);
  }

  /** A line of the demo's table. */
  record Truth(String change, String variant, String first, String settled) {

    static Truth of(String line) {
      String[] cells = line.split(",", -1);
      return new Truth(cells[0], cells[1], cells[2], cells[3]);
    }

    boolean isClean() {
      return first.equals(settled);
    }
  }

  static Stream<Truth> truths() throws IOException {
    return Files.readAllLines(TRUTHS).stream().skip(1).map(Truth::of);
  }

  static Stream<Truth> cleanTruths() throws IOException {
    return truths().filter(Truth::isClean);
  }

  @ParameterizedTest
  @MethodSource("cleanTruths")
  void theTruthLiesInTheSetOfNinetyFivePercent(Truth truth) {
    Weighed weighed = weigh(truth);
    long cutIn = ordinal(weighed, truth.first());
    assertThat(weighed.estimate().credible()).anyMatch(range -> range.holds(cutIn));
  }

  /**
   * From the register to the next revision. The oil cooler went to the bulkhead at LT-0748; on
   * record is that it was between LT-0735 and LT-0760.
   */
  @Test
  void whatTheAirframesSayBecomesACorrectionAndNarrowsTheAnswers() throws Exception {
    Truth truth = new Truth("oil-cooler-bulkhead", "la-2b", "LT-0748", "LT-0748");
    Weighed weighed = weigh(truth);
    Bounds window = weighed.window();
    assertThat(window.holds(748)).isTrue();
    assertThat(window.size()).isLessThan(26);
    Actor member = SignedIn.person(context, "Mette Member", Role.MEMBER);
    Actor moderator = SignedIn.person(context, "Mona Moderator", Role.MODERATOR);
    List<String> before = states();

    String token = UUID.randomUUID().toString();
    String form = narrow(member, truth, token);
    assertThat(form).matches("/corrections/[0-9]+/edit\\?kind=change&key=oil-cooler-bulkhead");
    assertThat(narrow(member, truth, token)).isEqualTo(form);
    Document page = page(get(form).with(SignedIn.as(member)));
    int count = weighed.airframes().size();
    assertThat(values(page, "locator"))
        .contains(count + " airframes observed to " + weighed.latest().orElseThrow());
    assertThat(values(page, "source")).contains("airframe-register");

    String correction = form.substring(0, form.indexOf("/edit"));
    decide(member, correction, "/submit");
    decide(moderator, correction, "/approve");

    assertThat(narrowed()).isEqualTo(window);
    List<String> after = states();
    assertThat(before).containsOnly("transition");
    assertThat(after).contains("settled", "transition");
    assertThat(after.get(748 - 735)).isIn("transition", "settled");

    List<UsedObservation> used = sightings.published(truth.change(), truth.variant());
    assertThat(used).hasSize(count);
    assertThat(used.stream().filter(UsedObservation::showsNew))
        .hasSize(weighed.gathered().countNew());
    jdbc.sql("delete from airframe").update();
    assertThat(sightings.published(truth.change(), truth.variant()))
        .hasSize(count)
        .noneMatch(UsedObservation::kept);
    assertThat(page(get("/sources/airframe-register")).text())
        .contains(count + " airframes observed to ");
  }

  private Weighed weigh(Truth truth) {
    Catalogue catalogue = snapshots.at(1).catalogue();
    Change change = catalogue.change(truth.change()).orElseThrow();
    CutInQuestion question =
        Weighing.questions(catalogue, change).stream()
            .filter(q -> q.cutIn().variant().equals(truth.variant()))
            .findFirst()
            .orElseThrow();
    Bounds recorded = new Bounds(question.lowest().orElseThrow(), question.highest().orElseThrow());
    return weighing.weigh(catalogue, change, question, recorded, false);
  }

  private static long ordinal(Weighed weighed, String serial) {
    return weighed.series().read(serial).map(Serial::ordinal).orElseThrow();
  }

  /** The window now on record, an end that was not told as it was. */
  private Bounds narrowed() {
    CutIn cutIn =
        snapshots
            .head()
            .catalogue()
            .change("oil-cooler-bulkhead")
            .orElseThrow()
            .cutIn("la-2b")
            .orElseThrow();
    return new Bounds(number(cutIn.firstSerial()), number(cutIn.settledSerial()));
  }

  private static long number(String serial) {
    return Long.parseLong(serial.replace("LT-", ""));
  }

  /** The states of the oil cooler's answers, for the serials that were in transition. */
  private List<String> states() throws Exception {
    List<String> states = new java.util.ArrayList<>();
    for (int ordinal = 735; ordinal < 760; ordinal++) {
      String json = response(get("/api/v1/expected?serial=LT-0" + ordinal)).getContentAsString();
      String of = json.substring(json.indexOf("\"feature\":\"oil-cooler\""));
      String state = of.substring(of.indexOf("\"state\":\"") + 9);
      states.add(state.substring(0, state.indexOf('"')));
    }
    return states;
  }

  private String narrow(Actor member, Truth truth, String token) throws Exception {
    return response(
            post("/corrections/narrow")
                .param("change", truth.change())
                .param("variant", truth.variant())
                .param("series", "lt")
                .param("token", token)
                .with(SignedIn.as(member))
                .with(csrf()))
        .getRedirectedUrl();
  }

  /** Sends the form on a correction's page that leads to an address, as it stands there. */
  private void decide(Actor actor, String correction, String verb) throws Exception {
    Document page = page(get(correction).with(SignedIn.as(actor)));
    MockHttpServletRequestBuilder request = post(correction + verb);
    for (Element field : page.select("form[action$=" + verb + "] input[type=hidden][name]")) {
      request = request.param(field.attr("name"), field.val());
    }
    assertThat(response(request.with(SignedIn.as(actor)).with(csrf())).getRedirectedUrl())
        .isEqualTo(correction);
  }

  private static List<String> values(Document page, String column) {
    return page.select("[name$=." + column + "]").eachAttr("value");
  }

  private Document page(MockHttpServletRequestBuilder request) throws Exception {
    MockHttpServletResponse response = response(request);
    assertThat(response.getStatus()).as(response.getContentAsString()).isEqualTo(200);
    return Jsoup.parse(response.getContentAsString());
  }

  private MockHttpServletResponse response(MockHttpServletRequestBuilder request) throws Exception {
    return mvc.perform(request).andReturn().getResponse();
  }
}
