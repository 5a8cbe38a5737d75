package club.yearline.accounts;

import java.io.IOException;
import java.net.CookieManager;
import java.net.HttpCookie;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** Somebody with a browser of their own, without scripts: opens pages and sends their forms. */
final class Visitor {

  private final String base;
  private final CookieManager cookies = new CookieManager();
  private final HttpClient client =
      HttpClient.newBuilder()
          .cookieHandler(cookies)
          .followRedirects(HttpClient.Redirect.NORMAL)
          .connectTimeout(Duration.ofSeconds(20))
          .build();

  private Document page = Document.createShell("");
  private int status;
  private URI at = URI.create("about:blank");

  Visitor(String base) {
    this.base = base;
  }

  Visitor open(String path) {
    return send(request(path).GET());
  }

  /** Sends the first form of the page whose action ends so, filled in: name, value, name, value. */
  Visitor submit(String action, String... filled) {
    Element form =
        page.select("form[method=post]").stream()
            .filter(f -> !f.attr("action").endsWith("/sign-out") || action.equals("/sign-out"))
            .filter(f -> f.attr("action").endsWith(action))
            .findFirst()
            .orElseThrow(() -> new AssertionError("No form " + action + " in\n" + page.body()));
    List<String> fields = new ArrayList<>();
    for (Element hidden : form.select("input[type=hidden]")) {
      fields.add(hidden.attr("name"));
      fields.add(hidden.attr("value"));
    }
    fields.addAll(List.of(filled));
    String to = form.attr("action").isEmpty() ? at.getPath() : form.attr("action");
    return post(to, fields.toArray(String[]::new));
  }

  /** Sends fields, whatever page was open. */
  Visitor post(String path, String... fields) {
    StringBuilder body = new StringBuilder();
    for (int i = 0; i < fields.length; i += 2) {
      body.append(i == 0 ? "" : "&").append(encoded(fields[i])).append('=');
      body.append(encoded(fields[i + 1]));
    }
    return send(
        request(path)
            .header("Content-Type", "application/x-www-form-urlencoded")
            .header("Origin", base)
            .POST(HttpRequest.BodyPublishers.ofString(body.toString())));
  }

  Visitor signIn(String email, String password) {
    return open("/sign-in").submit("/sign-in", "email", email, "password", password);
  }

  String text() {
    return page.text();
  }

  Document page() {
    return page;
  }

  int status() {
    return status;
  }

  String path() {
    return at.getPath();
  }

  Optional<HttpCookie> cookie(String name) {
    return cookies.getCookieStore().getCookies().stream()
        .filter(c -> c.getName().equals(name))
        .findFirst();
  }

  void lose(String cookie) {
    cookie(cookie).ifPresent(c -> cookies.getCookieStore().remove(null, c));
  }

  /** Brings somebody else's cookie. */
  void take(String name, String value) {
    HttpCookie cookie = new HttpCookie(name, value);
    cookie.setPath("/");
    cookie.setVersion(0);
    cookies.getCookieStore().add(URI.create(base), cookie);
  }

  private HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create(base + path)).timeout(Duration.ofSeconds(60));
  }

  private Visitor send(HttpRequest.Builder request) {
    try {
      HttpResponse<String> response =
          client.send(request.build(), HttpResponse.BodyHandlers.ofString());
      status = response.statusCode();
      at = response.uri();
      page = Jsoup.parse(response.body());
      return this;
    } catch (IOException e) {
      throw new AssertionError(e);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
