package club.yearline.accounts;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.http.HttpMethod;
import org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher;
import org.springframework.security.web.util.matcher.OrRequestMatcher;
import org.springframework.security.web.util.matcher.RequestMatcher;

/**
 * Every address and who may use it, in one place; whatever is not listed is denied. The first line
 * that fits counts.
 */
final class Routes {

  /** Who may use an address. */
  enum Need {
    /** Anybody, always: the way in. */
    NOTHING,
    /** Whoever may read the catalogue: anybody, or members where the club is closed. */
    READING,
    MEMBER,
    MODERATOR,
    KEEPER
  }

  /** Static files: no account ever matters. */
  static final RequestMatcher FILES =
      any(
          reading(
              "/css/**", "/js/**", "/webjars/**", "/favicon*.svg", "/robots.txt", "/worker.js"));

  /** Questions of programs too long for an address; they change nothing. */
  static final RequestMatcher API_QUESTIONS =
      any(on(HttpMethod.POST, "/api/v1/spot", "/api/v1/inspect", "/api/v1/cut-in"));

  /** What programs may ask. */
  static final RequestMatcher API =
      new OrRequestMatcher(any(reading("/api/v1/**", "/api/openapi/**")), API_QUESTIONS);

  private static final RequestMatcher PAGES =
      any(
          reading(
              "/",
              "/find",
              "/families/**",
              "/variants/**",
              "/features/**",
              "/changes/**",
              "/sources/**",
              "/history/**",
              "/pictures/**",
              "/expected/**",
              "/differences/**",
              "/spot/**",
              "/inspect/**",
              "/compare/**",
              "/revisions/**",
              "/cite/**",
              "/findings/**",
              "/feed/**",
              "/ground-school/**",
              "/problems/**"));

  private static final List<Route> TABLE =
      List.of(
          new Route(any(all("/sign-in/**", "/join/**", "/reset/**", "/set-up/**")), Need.NOTHING),
          new Route(
              any(all("/inspect/saved/**", "/inspect/token", "/ground-school/saved/**")),
              Need.MEMBER),
          // The link is the key: it opens one quiz, until a day.
          new Route(
              any(
                  reading(
                      "/ground-school/quiz/class/{token}",
                      "/ground-school/quiz/class/{token}/pictures/{sha256}")),
              Need.NOTHING),
          new Route(PAGES, Need.READING),
          new Route(API, Need.READING),
          // Becomes the address that answers; stores nothing.
          new Route(any(on(HttpMethod.POST, "/inspect/check")), Need.READING),
          new Route(
              any(
                  on(
                      HttpMethod.POST,
                      "/corrections/{id}/approve",
                      "/corrections/{id}/send-back",
                      "/corrections/{id}/reject")),
              Need.MODERATOR),
          new Route(any(all("/corrections/{id}/mend/**", "/admin/joining/**")), Need.MODERATOR),
          new Route(any(all("/admin/**", "/import/**")), Need.KEEPER),
          new Route(
              any(
                  all(
                      "/ground-school/quiz/links/**",
                      "/corrections/**",
                      "/inbox/**",
                      "/watching/**",
                      "/fleet/**",
                      "/account/**",
                      "/sign-out")),
              Need.MEMBER));

  private Routes() {}

  private record Route(RequestMatcher matcher, Need need) {}

  /** What a request needs; empty if its address is not listed. */
  static Optional<Need> need(HttpServletRequest request) {
    return TABLE.stream().filter(r -> r.matcher().matches(request)).map(Route::need).findFirst();
  }

  private static RequestMatcher any(List<RequestMatcher> matchers) {
    return new OrRequestMatcher(matchers);
  }

  private static List<RequestMatcher> reading(String... patterns) {
    List<RequestMatcher> matchers = new ArrayList<>(on(HttpMethod.GET, patterns));
    matchers.addAll(on(HttpMethod.HEAD, patterns));
    return matchers;
  }

  private static List<RequestMatcher> on(HttpMethod method, String... patterns) {
    PathPatternRequestMatcher.Builder builder = PathPatternRequestMatcher.withDefaults();
    return Stream.of(patterns).<RequestMatcher>map(p -> builder.matcher(method, p)).toList();
  }

  private static List<RequestMatcher> all(String... patterns) {
    PathPatternRequestMatcher.Builder builder = PathPatternRequestMatcher.withDefaults();
    return Stream.of(patterns).<RequestMatcher>map(builder::matcher).toList();
  }
}
