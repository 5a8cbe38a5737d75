package club.yearline.news;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.head;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.forwardedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.testing.SignedIn;
import java.nio.charset.StandardCharsets;
import java.util.UUID;
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
import org.springframework.test.web.servlet.ResultActions;

/** Watching and the inbox as pages, on the whole application. */
@NewsTest
class InboxTest {

  @Autowired private MockMvc mvc;
  @Autowired private ApplicationContext context;
  @Autowired private Newsroom newsroom;
  @Autowired private Messages messages;
  @Autowired private Watches watches;

  private Actor ann;

  @BeforeEach
  void somebodyNew() {
    newsroom.start();
    ann = SignedIn.person(context, "Ann " + UUID.randomUUID(), Role.MEMBER);
  }

  private Document page(String path) throws Exception {
    return Jsoup.parse(
        mvc.perform(get(path).with(SignedIn.as(ann)))
            .andExpect(status().isOk())
            .andReturn()
            .getResponse()
            .getContentAsString(StandardCharsets.UTF_8));
  }

  private ResultActions send(String path, String... fields) throws Exception {
    var request = post(path).with(SignedIn.as(ann)).with(csrf());
    for (int i = 0; i < fields.length; i += 2) {
      request.param(fields[i], fields[i + 1]);
    }
    return mvc.perform(request);
  }

  @ParameterizedTest
  @CsvSource({
    "family, turnstone, /families/turnstone",
    "variant, la-2b, /variants/la-2b",
    "feature, door-latch, /features/door-latch"
  })
  void aMemberWatchesByAButtonOnThePage(String kind, String key, String path) throws Exception {
    assertThat(page(path).select("form[action=/watching] button").text())
        .isEqualTo("Watch this " + kind);
    send("/watching", "kind", kind, "key", key).andExpect(redirectedUrl(path));
    send("/watching", "kind", kind, "key", key).andExpect(redirectedUrl(path));
    assertThat(watches.of(ann.id())).hasSize(1);
    assertThat(page(path).select("form[action=/watching/stop] button").text())
        .isEqualTo("Stop watching");
    assertThat(page("/watching").select("main li a").attr("href")).isEqualTo(path);
    send("/watching/stop", "kind", kind, "key", key, "from", "page").andExpect(redirectedUrl(path));
    send("/watching/stop", "kind", kind, "key", key).andExpect(redirectedUrl("/watching"));
    assertThat(watches.of(ann.id())).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"/families/turnstone", "/variants/la-2b", "/features/door-latch"})
  void aVisitorsPageHasNoButtonAndNoCookie(String path) throws Exception {
    String page =
        mvc.perform(get(path))
            .andExpect(status().isOk())
            .andExpect(header().doesNotExist("Set-Cookie"))
            .andExpect(header().string("Cache-Control", "no-cache"))
            .andReturn()
            .getResponse()
            .getContentAsString();
    assertThat(page).doesNotContain("/watching").doesNotContain("_csrf");
  }

  @ParameterizedTest
  @CsvSource({
    "family, curlew, 404",
    "variant, turnstone, 404",
    "source, parts-book, 400",
    "FAMILY, turnstone, 400",
    "'', '', 400",
    "family, '', 404",
    "feature, <script>alert(1)</script>, 404"
  })
  void whatCannotBeWatchedIsRefusedWithAReason(String kind, String key, int code) throws Exception {
    String page =
        send("/watching", "kind", kind, "key", key)
            .andExpect(status().is(code))
            .andReturn()
            .getResponse()
            .getContentAsString();
    assertThat(page).doesNotContain("<script>alert");
    assertThat(watches.of(ann.id())).isEmpty();
  }

  @Test
  void aVeryLongKeyIsNoFailure() throws Exception {
    send("/watching", "kind", "family", "key", "x".repeat(5000)).andExpect(status().isNotFound());
    send("/watching/stop", "kind", "family", "key", "x".repeat(5000))
        .andExpect(redirectedUrl("/watching"));
  }

  @Test
  void nobodyWatchesWithoutEnd() throws Exception {
    for (int i = 0; i < WatchController.MOST; i++) {
      watches.add(ann.id(), Watched.family("f-" + i));
    }
    send("/watching", "kind", "family", "key", "turnstone")
        .andExpect(status().isUnprocessableContent());
    assertThat(page("/watching").select("main li").text()).contains("f-1 (withdrawn)");
  }

  @Test
  void theFrameSaysHowMuchIsUnread() throws Exception {
    assertThat(page("/families").select("details.desk summary").text()).doesNotContain("new");
    messages.add(ann.id(), Message.About.joinAsked(1), null);
    messages.add(ann.id(), Message.About.joinAsked(2), null);
    assertThat(page("/families").select("details.desk summary").text()).contains("2 new");
    assertThat(page("/families").select("details.desk li:has(a[href=/inbox])").text())
        .isEqualTo("Inbox 2 new");
  }

  @Test
  void aMessageLeadsToWhatItIsAboutAndIsReadThen() throws Exception {
    messages.add(ann.id(), Message.About.correction(Message.Kind.MENDED, 7, "T", ann.id()), null);
    String link = page("/inbox").select("main ol a").attr("href");
    mvc.perform(head(link).with(SignedIn.as(ann))).andExpect(redirectedUrl("/corrections/7"));
    mvc.perform(get(link).header("Sec-Purpose", "prefetch").with(SignedIn.as(ann)))
        .andExpect(redirectedUrl("/corrections/7"));
    assertThat(messages.unread(ann.id())).isEqualTo(1);
    mvc.perform(get(link).with(SignedIn.as(ann))).andExpect(redirectedUrl("/corrections/7"));
    assertThat(messages.unread(ann.id())).isZero();
  }

  @Test
  void theMessagesOfOthersAreNotThere() throws Exception {
    Actor bo = SignedIn.person(context, "Bo " + UUID.randomUUID(), Role.KEEPER);
    messages.add(bo.id(), Message.About.joinAsked(1), null);
    long id = messages.of(bo.id(), 0, 1).get(0).id();
    mvc.perform(get("/inbox/" + id).with(SignedIn.as(ann))).andExpect(status().isNotFound());
    mvc.perform(get("/inbox/999999999").with(SignedIn.as(ann))).andExpect(status().isNotFound());
    mvc.perform(get("/inbox/first").with(SignedIn.as(ann))).andExpect(status().isBadRequest());
    send("/inbox/read", "upTo", "" + Long.MAX_VALUE).andExpect(redirectedUrl("/inbox"));
    assertThat(messages.unread(bo.id())).isEqualTo(1);
    assertThat(page("/inbox").select("main ol li")).isEmpty();
  }

  @Test
  void allAreMarkedAsReadAtOnceAndTwiceDoesNoHarm() throws Exception {
    messages.add(ann.id(), Message.About.joinAsked(1), null);
    Document page = page("/inbox");
    String upTo = page.select("form[action=/inbox/read] input[name=upTo]").attr("value");
    messages.add(ann.id(), Message.About.joinAsked(2), null);
    send("/inbox/read", "upTo", upTo).andExpect(redirectedUrl("/inbox"));
    send("/inbox/read", "upTo", upTo).andExpect(redirectedUrl("/inbox"));
    assertThat(messages.unread(ann.id())).isEqualTo(1);
    send("/inbox/read").andExpect(status().isBadRequest());
    send("/inbox/read", "upTo", "all").andExpect(status().isBadRequest());
  }

  @Test
  void aLongInboxHasPages() throws Exception {
    for (int i = 0; i <= InboxController.ON_A_PAGE; i++) {
      messages.add(ann.id(), Message.About.joinAsked(i), null);
    }
    assertThat(page("/inbox").select("main ol.rows > li")).hasSize(InboxController.ON_A_PAGE);
    assertThat(page("/inbox?page=2").select("main ol.rows > li")).hasSize(1);
    for (String page : new String[] {"0", "3", "-1"}) {
      mvc.perform(get("/inbox?page=" + page).with(SignedIn.as(ann)))
          .andExpect(status().isNotFound());
    }
  }

  @Test
  void scriptInATitleStaysText() throws Exception {
    String title = "<script>alert('x')</script>";
    messages.add(ann.id(), Message.About.correction(Message.Kind.MENDED, 7, title, ann.id()), null);
    Document page = page("/inbox");
    assertThat(page.select("main script")).isEmpty();
    assertThat(page.select("main ol").text()).contains(title);
  }

  @Test
  void mailIsNotOfferedWhereItCannotBeSent() throws Exception {
    assertThat(page("/inbox").select("#mail")).isEmpty();
    send("/inbox/mail", "wish", "hourly").andExpect(status().isBadRequest());
    send("/inbox/mail").andExpect(status().isBadRequest());
    send("/inbox/mail", "wish", "daily").andExpect(redirectedUrl("/inbox"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"/inbox", "/inbox/1", "/watching"})
  void aVisitorIsSentToSignIn(String path) throws Exception {
    mvc.perform(get(path)).andExpect(redirectedUrl("/sign-in?to=" + path.replace("/", "%2F")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"/watching", "/watching/stop", "/inbox/read", "/inbox/mail"})
  void nothingIsDoneWithoutAnAccountOrWithoutTheFormsToken(String path) throws Exception {
    mvc.perform(post(path).with(csrf()).param("kind", "family").param("key", "turnstone"))
        .andExpect(forwardedUrl("/sign-in/first"));
    mvc.perform(
            post(path)
                .with(SignedIn.as(ann))
                .header("Origin", "https://elsewhere.example")
                .param("kind", "family")
                .param("key", "turnstone"))
        .andExpect(status().isForbidden());
    assertThat(watches.of(ann.id())).isEmpty();
  }

  @Test
  void whoAsksToJoinIsToldToModerators() throws Exception {
    Actor mona = SignedIn.person(context, "Mona " + UUID.randomUUID(), Role.MODERATOR);
    takeRequests(true);
    mvc.perform(
            post("/join")
                .with(csrf())
                .param("name", "Nina New")
                .param("email", UUID.randomUUID() + "@club.example"))
        .andExpect(redirectedUrl("/join?asked=true"));
    takeRequests(false);
    assertThat(messages.of(mona.id(), 0, 9))
        .singleElement()
        .extracting(message -> message.about().kind())
        .isEqualTo(Message.Kind.JOIN_ASKED);
    assertThat(messages.unread(ann.id())).isZero();
  }

  private void takeRequests(boolean yes) throws Exception {
    Actor keeper = SignedIn.person(context, "Kai Keeper", Role.KEEPER);
    String form =
        mvc.perform(get("/admin/settings").with(SignedIn.as(keeper)))
            .andReturn()
            .getResponse()
            .getContentAsString();
    var request =
        post("/admin/settings")
            .with(SignedIn.as(keeper))
            .with(csrf())
            .param("logDays", "365")
            .param("version", Jsoup.parse(form).select("input[name=version]").attr("value"));
    if (yes) {
      request.param("joinRequests", "on");
    }
    mvc.perform(request).andExpect(redirectedUrl("/admin/settings"));
  }

  @Test
  void whoClosesTheAccountLeavesNoMessagesAndNoWatches() throws Exception {
    watches.add(ann.id(), Watched.family("turnstone"));
    messages.add(ann.id(), Message.About.joinAsked(1), null);
    send("/account/close", "current", SignedIn.PASSWORD).andExpect(redirectedUrl("/"));
    assertThat(watches.of(ann.id())).isEmpty();
    assertThat(messages.count(ann.id())).isZero();
    newsroom.publish("Afterwards", newsroom.latch("After " + ann.name()));
    assertThat(messages.count(ann.id())).isZero();
  }
}
