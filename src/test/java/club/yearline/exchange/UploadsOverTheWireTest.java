package club.yearline.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.accounts.ActingAs;
import club.yearline.accounts.Actor;
import club.yearline.accounts.Role;
import club.yearline.accounts.WholeApplication;
import club.yearline.testing.SignedIn;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.ContextConfiguration;

/** Files that are too large meet the container before they meet us. */
@SpringBootTest(
    webEnvironment = WebEnvironment.RANDOM_PORT,
    properties = {
      "yearline.demo=false",
      "spring.servlet.multipart.max-file-size=256KB",
      "spring.servlet.multipart.max-request-size=512KB"
    })
@ContextConfiguration(initializers = WholeApplication.Fresh.class)
class UploadsOverTheWireTest {

  private static final String BOUNDARY = "part-of-the-form";

  @Autowired ApplicationContext context;
  @Autowired JdbcClient jdbc;
  @LocalServerPort int port;

  private final HttpClient browser =
      HttpClient.newBuilder()
          .cookieHandler(new CookieManager())
          .followRedirects(HttpClient.Redirect.NORMAL)
          .build();

  @BeforeEach
  void signIn() throws Exception {
    Actor member = SignedIn.person(context, "Mette Member", Role.MEMBER);
    Map<String, String> fields =
        Map.of(
            "_csrf",
            token("/sign-in"),
            "email",
            ActingAs.email(member.name()),
            "password",
            SignedIn.PASSWORD,
            "to",
            "/corrections/package");
    String form =
        fields.entrySet().stream()
            .map(f -> f.getKey() + "=" + URLEncoder.encode(f.getValue(), StandardCharsets.UTF_8))
            .collect(Collectors.joining("&"));
    HttpResponse<String> answer =
        send("/sign-in", "application/x-www-form-urlencoded", BodyPublishers.ofString(form));
    assertThat(answer.uri().getPath()).isEqualTo("/corrections/package");
  }

  private HttpRequest.Builder to(String path) {
    return HttpRequest.newBuilder(URI.create("http://localhost:" + port + path));
  }

  private String token(String path) throws Exception {
    HttpResponse<String> page =
        browser.send(to(path).build(), BodyHandlers.ofString(StandardCharsets.UTF_8));
    return Jsoup.parse(page.body()).select("main input[name=_csrf]").attr("value");
  }

  private HttpResponse<String> send(String path, String type, BodyPublisher body) throws Exception {
    return browser.send(
        to(path).header("Content-Type", type).POST(body).build(),
        BodyHandlers.ofString(StandardCharsets.UTF_8));
  }

  /** A package form with a file of so many bytes. */
  private HttpResponse<String> upload(byte[] content) throws Exception {
    List<byte[]> parts = new ArrayList<>();
    parts.add(field("_csrf", token("/corrections/package")));
    parts.add(field("token", UUID.randomUUID().toString()));
    parts.add(
        ("--"
                + BOUNDARY
                + "\r\nContent-Disposition: form-data; name=\"file\"; filename=\"a.zip\""
                + "\r\nContent-Type: application/zip\r\n\r\n")
            .getBytes(StandardCharsets.UTF_8));
    parts.add(content);
    parts.add(("\r\n--" + BOUNDARY + "--\r\n").getBytes(StandardCharsets.UTF_8));
    return send(
        "/corrections/package",
        "multipart/form-data; boundary=" + BOUNDARY,
        BodyPublishers.ofByteArrays(parts));
  }

  private static byte[] field(String name, String value) {
    return ("--"
            + BOUNDARY
            + "\r\nContent-Disposition: form-data; name=\""
            + name
            + "\"\r\n\r\n"
            + value
            + "\r\n")
        .getBytes(StandardCharsets.UTF_8);
  }

  private long corrections() {
    return jdbc.sql("select count(*) from correction").query(Long.class).single();
  }

  @Test
  void aFileThatIsTooLargeIsAnsweredByAPageThatSaysWhatToDo() throws Exception {
    for (int size : new int[] {300 * 1024, 600 * 1024}) {
      HttpResponse<String> answer = upload(new byte[size]);
      assertThat(answer.statusCode()).as("%d bytes", size).isEqualTo(413);
      Document page = Jsoup.parse(answer.body());
      assertThat(page.select("h1").text()).isEqualTo("That is too large");
      assertThat(page.select("main").text()).contains("Send fewer or smaller files.");
    }
    assertThat(corrections()).isZero();
  }

  @Test
  void aFileThatFitsIsRead() throws Exception {
    HttpResponse<String> answer = upload(new byte[100]);
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(Jsoup.parse(answer.body()).select("tbody tr").text()).contains("a.zip");
  }
}
