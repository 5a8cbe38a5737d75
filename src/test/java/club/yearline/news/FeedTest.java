package club.yearline.news;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.head;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.catalog.Contributor;
import club.yearline.testing.SignedIn;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.MvcResult;
import org.w3c.dom.Element;

/** The feeds, on the whole application. */
@NewsTest
class FeedTest {

  @Autowired private MockMvc mvc;
  @Autowired private ApplicationContext context;
  @Autowired private Newsroom newsroom;

  @BeforeEach
  void fillTheCatalogue() {
    newsroom.start();
  }

  private String feed(String path) throws Exception {
    MvcResult result =
        mvc.perform(get(path))
            .andExpect(status().isOk())
            .andExpect(content().contentType("application/atom+xml;charset=UTF-8"))
            .andReturn();
    return result.getResponse().getContentAsString(StandardCharsets.UTF_8);
  }

  private List<Element> entries(String path) throws Exception {
    return AtomRules.children(AtomRules.parsed(feed(path)), "entry");
  }

  private static String text(Element of, String name) {
    return AtomRules.children(of, name).get(0).getTextContent();
  }

  private static String link(Element of, String rel) {
    return AtomRules.children(of, "link").stream()
        .filter(l -> l.getAttribute("rel").equals(rel))
        .map(l -> l.getAttribute("href"))
        .findFirst()
        .orElse("");
  }

  @ParameterizedTest
  @ValueSource(strings = {"/feed", "/feed/families/turnstone", "/feed?before=2"})
  void feedsKeepTheRulesOfTheStandard(String path) throws Exception {
    newsroom.publish("Lists the latch anew", newsroom.latch("Rotary latch, late"));
    assertThat(AtomRules.brokenBy(feed(path))).isEmpty();
    assertThat(AtomGrammar.brokenBy(feed(path))).isEmpty();
  }

  @Test
  void theGrammarOfTheStandardFindsWhatIsWrong() throws Exception {
    String feed = feed("/feed");
    assertThat(AtomGrammar.brokenBy(feed.replaceFirst("<id>[^<]*</id>", ""))).isNotEmpty();
    assertThat(AtomGrammar.brokenBy(feed.replaceFirst("<updated>[^<]*", "<updated>today")))
        .isNotEmpty();
    assertThat(AtomGrammar.brokenBy(feed.replaceFirst("<entry>", "<entry><guid>1</guid>")))
        .isNotEmpty();
    assertThat(AtomGrammar.brokenBy(feed.replaceFirst(" href=", " hrev="))).isNotEmpty();
  }

  @Test
  void anEntrySaysInPlainWordsWhatTheRevisionDid() throws Exception {
    int number = newsroom.publish("Moves the latch to 1967", newsroom.latchFrom(1967));
    Element entry = entries("/feed").get(0);
    assertThat(text(entry, "title")).isEqualTo("Revision " + number + ": Moves the latch to 1967");
    assertThat(text(entry, "summary"))
        .isEqualTo(
            "Moves the latch to 1967\nEdits: 1 changed.\nChanged answers: 1 answer changed.");
    assertThat(link(entry, "alternate")).isEqualTo("https://catalogue.example/revisions/" + number);
  }

  @Test
  void whoMadeARevisionIsNamed() throws Exception {
    Actor bo = SignedIn.person(context, "Bo Other", Role.MODERATOR);
    newsroom.publishBy(
        Contributor.named("Åsa"),
        Contributor.person(bo.id()),
        "Titles the latch anew",
        newsroom.latch("Rotary latch, or so"));
    Element entry = entries("/feed").get(0);
    assertThat(text(AtomRules.children(entry, "author").get(0), "name")).isEqualTo("Åsa");
    assertThat(text(AtomRules.children(entry, "contributor").get(0), "name")).isEqualTo("Bo Other");
  }

  @Test
  void textsOfPeopleAreEscapedAndWhatXmlCannotHoldIsReplaced() throws Exception {
    String note = "<script>alert('x')</script> & ]]> \u0001\u000b\ud800 end";
    newsroom.publish(note, newsroom.latch("Rotary latch <b>"));
    String feed = feed("/feed");
    assertThat(feed).doesNotContain("<script").contains("&lt;script&gt;");
    assertThat(AtomRules.brokenBy(feed)).isEmpty();
    assertThat(text(AtomRules.children(AtomRules.parsed(feed), "entry").get(0), "summary"))
        .startsWith("<script>alert('x')</script> & ]]> \uFFFD\uFFFD");
  }

  @Test
  void aFamilysFeedHoldsWhatTouchesTheFamilyOnly() throws Exception {
    int here = newsroom.publish("Titles the latch anew", newsroom.latch("Rotary latch " + 1));
    int elsewhere = newsroom.publish("Adds the Whimbrel", newsroom.whimbrel("The other family"));
    List<String> titles =
        entries("/feed/families/turnstone").stream().map(e -> text(e, "title")).toList();
    assertThat(titles).anyMatch(t -> t.startsWith("Revision " + here + ":"));
    assertThat(titles).noneMatch(t -> t.startsWith("Revision " + elsewhere + ":"));
    assertThat(text(entries("/feed/families/whimbrel").get(0), "title"))
        .startsWith("Revision " + elsewhere + ":");
  }

  @Test
  void aFeatureTouchesTheFamiliesItHasCutInsFor() throws Exception {
    int number = newsroom.publish("Describes the latch", newsroom.latchFeature("How it shuts"));
    assertThat(text(entries("/feed/families/turnstone").get(0), "title"))
        .startsWith("Revision " + number + ":");
  }

  @Test
  void followingTheLinksReadsEveryRevisionOnce() throws Exception {
    for (int i = 0; i <= Feeds.ENTRIES; i++) {
      newsroom.publish("Titles it " + i, newsroom.latch("Rotary latch, " + i));
    }
    List<String> ids = new ArrayList<>();
    String path = "/feed";
    while (!path.isEmpty()) {
      Element feed = AtomRules.parsed(feed(path));
      List<Element> entries = AtomRules.children(feed, "entry");
      assertThat(entries).hasSizeBetween(1, Feeds.ENTRIES);
      entries.forEach(e -> ids.add(text(e, "id")));
      assertThat(link(feed, "self")).isEqualTo("https://catalogue.example" + path);
      path = link(feed, "next").replace("https://catalogue.example", "");
    }
    assertThat(ids).doesNotHaveDuplicates().hasSize(newsroom.newest());
  }

  @Test
  void aRevisionHasTheSameNameInEveryFeed() throws Exception {
    newsroom.publish("Once more", newsroom.latch("Rotary latch, once more"));
    assertThat(text(entries("/feed").get(0), "id"))
        .isEqualTo(text(entries("/feed/families/turnstone").get(0), "id"))
        .matches("urn:uuid:[0-9a-f-]{36}");
  }

  @Test
  void whatHasNotChangedIsNotSentAgain() throws Exception {
    MvcResult first =
        mvc.perform(get("/feed"))
            .andExpect(header().string("Cache-Control", "no-cache"))
            .andExpect(header().exists("Last-Modified"))
            .andReturn();
    String tag = first.getResponse().getHeader("ETag");
    mvc.perform(get("/feed").header("If-None-Match", tag))
        .andExpect(status().isNotModified())
        .andExpect(content().string(""));
    mvc.perform(
            get("/feed")
                .header("If-Modified-Since", first.getResponse().getHeader("Last-Modified")))
        .andExpect(status().isNotModified());
    mvc.perform(head("/feed")).andExpect(status().isOk()).andExpect(header().exists("ETag"));
    newsroom.publish("And again", newsroom.latch("Rotary latch, and again " + tag));
    mvc.perform(get("/feed").header("If-None-Match", tag)).andExpect(status().isOk());
  }

  @Test
  void aFeedIsNotSharedBetweenPeople() throws Exception {
    mvc.perform(get("/feed").with(SignedIn.as(Role.MEMBER)))
        .andExpect(header().string("Cache-Control", "no-cache, private"));
  }

  @ParameterizedTest
  @CsvSource({
    "/feed/families/curlew, 404",
    "/feed?before=1, 404",
    "/feed?before=-7, 404",
    "/feed?before=first, 400",
    "/feed/families/turnstone?before=1, 404"
  })
  void whatThereIsNotIsSaidToBeThat(String path, int code) throws Exception {
    mvc.perform(get(path)).andExpect(status().is(code));
  }

  @ParameterizedTest
  @CsvSource({
    "/revisions, /feed",
    "/revisions/1, /feed",
    "/families/turnstone, /feed/families/turnstone"
  })
  void pagesNameTheFeedThatGoesWithThem(String path, String feed) throws Exception {
    Document page =
        Jsoup.parse(
            mvc.perform(get(path))
                .andExpect(status().isOk())
                .andExpect(header().doesNotExist("Set-Cookie"))
                .andReturn()
                .getResponse()
                .getContentAsString());
    assertThat(page.select("head link[rel=alternate][type=application/atom+xml]").attr("href"))
        .isEqualTo(feed);
    if (!path.equals("/revisions/1")) {
      assertThat(page.select("main a[href=" + feed + "]").text()).contains("Atom");
    }
  }

  @Test
  void anUnchangedPageIsStillNotSentAgain() throws Exception {
    String tag =
        mvc.perform(get("/families/turnstone")).andReturn().getResponse().getHeader("ETag");
    mvc.perform(get("/families/turnstone").header("If-None-Match", tag))
        .andExpect(status().isNotModified());
  }
}
