package club.yearline.accounts;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import club.yearline.testing.SignedIn;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.http.MediaType;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.TestPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.MvcResult;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/**
 * Every address that takes a form, as the table of addresses lists them, against whatever may be
 * sent to it. Whoever sends it may do everything, so that it reaches the page: there it must be
 * refused without a failure and without a trace in the database. What each form says about its own
 * fields is tested beside its pages.
 */
@WholeApplication
@TestPropertySource(properties = "start.of=every-form") // rows are counted: nobody else may add any
class EveryFormTest {

  private static final Path TABLE = Path.of("src", "test", "resources", "authorization.txt");
  private static final Path TEMPLATES = Path.of("src", "main", "resources", "templates");
  private static final Pattern FIELD = Pattern.compile("\\bname=\"([\\w-]+)\"|:: \\w+\\('(\\w+)'");
  private static final String SCRIPT = "<script>alert(1)</script>\"'><img src=x onerror=alert(2)>";

  /** An invitation may be handed over without an address: an empty form is a whole one. */
  private static final String NEEDS_NOTHING = "/admin/joining/invite";

  /** Where it is written down that something was tried. */
  private static final Set<String> TRACES =
      Set.of("security_event", "failed_sign_in", "passkey_challenge", "spring_session");

  @Autowired private MockMvc mvc;
  @Autowired private JdbcClient jdbc;
  @Autowired private ApplicationContext context;

  @BeforeEach
  void somebodyWhoMayDoEverything() {
    SignedIn.person(context, Role.KEEPER);
  }

  @Test
  void thereAreFormsAndFieldsToTry() throws IOException {
    assertThat(forms()).hasSizeGreaterThan(50).contains("/sign-in", "/corrections/{id}/edit");
    assertThat(fields()).contains("email", "current", "title", "credential", "serial", "kept");
  }

  @Test
  void withoutItsTokenNoFormReachesItsPage() throws Exception {
    for (String form : forms()) {
      MvcResult result = mvc.perform(request(form, "7777")).andReturn();
      assertThat(result.getHandler()).as(form).isNull();
    }
  }

  @Test
  void whatIsSentWithoutASessionIsKeptForAfterSigningIn() throws Exception {
    for (String form : forms()) {
      MvcResult result =
          mvc.perform(
                  post(URI.create(filled(form, "7777"))).param("note", "long typed").with(csrf()))
              .andReturn();
      if (result.getHandler() == null) {
        assertThat(result.getResponse().getForwardedUrl()).as(form).isEqualTo("/sign-in/first");
        assertThat(result.getRequest().getAttribute(KeptForm.class.getName()))
            .as(form)
            .isEqualTo(
                new KeptForm(
                    filled(form, "7777"), List.of(new KeptForm.Field("note", "long typed"))));
      }
    }
  }

  @Test
  void whatAnotherSiteMakesABrowserSendReachesNoPage() throws Exception {
    for (String form : forms()) {
      for (String[] header :
          List.of(
              new String[] {"Sec-Fetch-Site", "cross-site"},
              new String[] {"Sec-Fetch-Site", "same-site"},
              new String[] {"Origin", "https://elsewhere.example"},
              new String[] {"Origin", "null"})) {
        MvcResult result =
            mvc.perform(request(form, "7777").header(header[0], header[1]).with(csrf()))
                .andReturn();
        assertThat(result.getHandler()).as(form).isNull();
        assertThat(result.getResponse().getStatus()).as(form).isEqualTo(403);
      }
    }
  }

  @Test
  void anEmptyFormIsNoFailureAndStoresNothing() throws Exception {
    assertHarmless("7777", request -> {});
  }

  @Test
  void overLongFieldsAreNoFailureAndAreNotStored() throws Exception {
    String long_ = "x".repeat(5_000);
    assertHarmless("7777", request -> fill(request, long_));
  }

  @ParameterizedTest
  @ValueSource(strings = {"-1", "99999999999999999999", "true", "\u0000"})
  void fieldsOfTheWrongKindAreNoFailureAndAreNotStored(String value) throws Exception {
    assertHarmless("7777", request -> fill(request, value));
  }

  @ParameterizedTest
  @ValueSource(strings = {"-1", "99999999999999999999", "é", "%3Cscript%3E"})
  void aReferenceToNothingIsNoFailureAndStoresNothing(String id) throws Exception {
    assertHarmless(id, request -> fill(request, "1"));
  }

  @Test
  void fieldsGivenTwiceAreNoFailureAndStoreNothing() throws Exception {
    for (String form : forms()) {
      Map<String, Long> before = rows();
      MockHttpServletRequestBuilder request = request(form, "7777").with(csrf());
      for (String field : fields()) {
        request.param(field, "one", "two");
      }
      assertHarmless(form, request, before);
    }
  }

  @Test
  void scriptInEveryFieldComesBackAsText() throws Exception {
    for (String form : forms()) {
      MockHttpServletRequestBuilder request = request(form, "7777").with(csrf());
      fill(request, SCRIPT);
      String answer = perform(form, request).getResponse().getContentAsString();
      assertThat(answer).as(form).doesNotContain("<script>alert", "<img src=x");
    }
  }

  @Test
  void lineEndsInEveryFieldGetIntoNoHeader() throws Exception {
    for (String form : forms()) {
      MockHttpServletRequestBuilder request = request(form, "7777").with(csrf());
      fill(request, "/x\r\nSet-Cookie: stolen=1");
      MvcResult result = perform(form, request);
      for (String header : result.getResponse().getHeaderNames()) {
        assertThat(result.getResponse().getHeaders(header))
            .as(form)
            .noneMatch(h -> h.contains("\n"));
      }
      assertThat(result.getResponse().getCookie("stolen")).isNull();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "https://elsewhere.example/",
        "//elsewhere.example/",
        "/\\elsewhere.example",
        "javascript:alert(1)"
      })
  void noFormLeadsElsewhere(String to) throws Exception {
    for (String form : forms()) {
      MockHttpServletRequestBuilder request = request(form, "7777").with(csrf());
      fill(request, to);
      String redirect = perform(form, request).getResponse().getRedirectedUrl();
      if (redirect != null) {
        assertThat(redirect).as(form).startsWith("/").doesNotStartWith("//").doesNotContain("\\");
      }
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        MediaType.APPLICATION_JSON_VALUE,
        MediaType.MULTIPART_FORM_DATA_VALUE,
        MediaType.TEXT_XML_VALUE,
        "nonsense"
      })
  void aBodyOfAnotherKindIsNoFailureAndStoresNothing(String type) throws Exception {
    assertHarmless(
        "7777",
        request ->
            request
                .header("Content-Type", type)
                .content("{\"name\":\"x\"}".getBytes(StandardCharsets.UTF_8)));
  }

  private void assertHarmless(String id, Consumer<MockHttpServletRequestBuilder> filled)
      throws Exception {
    for (String form : forms()) {
      Map<String, Long> before = rows();
      MockHttpServletRequestBuilder request = request(form, id).with(csrf());
      filled.accept(request);
      assertHarmless(form, request, before);
    }
  }

  private void assertHarmless(
      String form, MockHttpServletRequestBuilder request, Map<String, Long> before)
      throws Exception {
    perform(form, request);
    if (!form.equals(NEEDS_NOTHING)) {
      assertThat(rows().entrySet()).as(form).containsExactlyElementsOf(before.entrySet());
    }
  }

  /** Every answer but a failure of ours. */
  private MvcResult perform(String form, MockHttpServletRequestBuilder request) {
    try {
      MvcResult result = mvc.perform(request).andReturn();
      assertThat(result.getResponse().getStatus()).as(form).isLessThan(500);
      return result;
    } catch (Exception e) {
      // What no handler of ours takes would be a failure page.
      throw new AssertionError(form, e);
    }
  }

  private static MockHttpServletRequestBuilder request(String form, String id) {
    return post(URI.create(filled(form, id))).with(SignedIn.as(Role.KEEPER));
  }

  private static String filled(String form, String id) {
    return form.replaceAll("\\{[^}/]*}", Matcher.quoteReplacement(id)).replace("é", "%C3%A9");
  }

  private static void fill(MockHttpServletRequestBuilder request, String value) {
    for (String field : fields()) {
      request.param(field, value);
    }
  }

  private static List<String> forms() throws IOException {
    List<String> forms = new ArrayList<>();
    for (String line : Files.readAllLines(TABLE)) {
      String[] parts = line.split(" +");
      if (parts.length == 3 && parts[1].equals("POST") && !parts[2].startsWith("/api/")) {
        forms.add(parts[2]);
      }
    }
    return forms;
  }

  /** The names of all fields of all pages: each form is sent every one. */
  private static Set<String> fields() {
    Set<String> fields = new TreeSet<>();
    try (Stream<Path> files = Files.walk(TEMPLATES)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".html")).toList()) {
        Matcher field = FIELD.matcher(Files.readString(file));
        while (field.find()) {
          fields.add(field.group(1) == null ? field.group(2) : field.group(1));
        }
      }
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    return fields;
  }

  /** How many rows each table has. */
  private Map<String, Long> rows() {
    Map<String, Long> rows = new TreeMap<>();
    jdbc.sql(tables().stream().map(EveryFormTest::counting).collect(joining(" union all ")))
        .query((row, n) -> rows.put(row.getString(1), row.getLong(2)))
        .list();
    assertThat(rows).containsKey("person");
    return rows;
  }

  private static String counting(String table) {
    return "select '%s', count(*) from \"%s\"".formatted(table, table);
  }

  private List<String> tables() {
    return jdbc
        .sql(
            """
            select table_name from information_schema.tables
            where lower(table_schema) = 'public' and table_type = 'BASE TABLE'
            """)
        .query(String.class)
        .list()
        .stream()
        .filter(table -> TRACES.stream().noneMatch(table::startsWith))
        .toList();
  }
}
