package club.yearline.accounts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.request;

import club.yearline.testing.SignedIn;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.http.HttpMethod;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.MvcResult;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/**
 * Every mapped address times everybody who may ask, against one table. A new address must be
 * entered there: {@code src/test/resources/authorization.txt}.
 */
@WholeApplication
class AuthorizationTableTest {

  private static final Path TABLE = Path.of("src", "test", "resources", "authorization.txt");

  @Autowired private MockMvc mvc;
  @Autowired private Club club;

  @Autowired
  @Qualifier("requestMappingHandlerMapping")
  private RequestMappingHandlerMapping mappings;

  /** Who asks. */
  enum Asker {
    VISITOR(null, false),
    VISITOR_OF_A_CLOSED_CLUB(null, true),
    MEMBER(Role.MEMBER, true),
    MODERATOR(Role.MODERATOR, true),
    KEEPER(Role.KEEPER, true);

    private final @Nullable Role role;
    private final boolean closed;

    Asker(@Nullable Role role, boolean closed) {
      this.role = role;
      this.closed = closed;
    }

    boolean may(String need) {
      return switch (need) {
        case "anybody" -> true;
        case "nobody" -> false;
        case "reader" -> role != null || !closed;
        default -> role != null && role.atLeast(Role.valueOf(need.toUpperCase()));
      };
    }
  }

  @AfterEach
  void openTheClub() {
    close(false);
  }

  @Test
  void everyAddressStandsInTheTable() throws IOException {
    Set<String> missing = mapped();
    missing.removeAll(table().keySet());
    Set<String> gone = new TreeSet<>(table().keySet());
    gone.removeAll(mapped());
    assertThat(missing).as("not in the table").isEmpty();
    assertThat(gone).as("in the table, but no address").isEmpty();
  }

  @ParameterizedTest
  @EnumSource
  void everybodyReachesWhatTheTableSaysAndNothingElse(Asker asker) throws Exception {
    close(asker.closed);
    List<String> wrong = new ArrayList<>();
    for (Map.Entry<String, String> line : table().entrySet()) {
      boolean reached = reaches(asker, line.getKey());
      if (reached != asker.may(line.getValue())) {
        wrong.add(line.getKey() + (reached ? " is open to " : " is shut to ") + asker);
      }
    }
    assertThat(wrong).isEmpty();
  }

  /** A request that was let through has found its controller, whatever that then said. */
  private boolean reaches(Asker asker, String address) throws Exception {
    String[] parts = address.split(" ");
    MockHttpServletRequestBuilder request =
        request(HttpMethod.valueOf(parts[0]), filled(parts[1])).with(csrf());
    if (parts[1].startsWith("/api/")) {
      request.contentType(MediaType.APPLICATION_JSON).content("{}");
    }
    if (asker.role != null) {
      request.with(SignedIn.as(asker.role));
    }
    MvcResult result = mvc.perform(request).andReturn();
    boolean reached = result.getHandler() != null;
    if (!reached) {
      assertTurnedAway(asker, address, result);
    }
    return reached;
  }

  private static String filled(String pattern) {
    return pattern.replaceAll("\\{sha256[^/]*", "0".repeat(64)).replaceAll("\\{[^}/]*}", "7777");
  }

  private static void assertTurnedAway(Asker asker, String address, MvcResult result) {
    int status = result.getResponse().getStatus();
    String to = result.getResponse().getRedirectedUrl();
    String forward = result.getResponse().getForwardedUrl();
    boolean toSignIn =
        to != null && to.startsWith("/sign-in?to=") || "/sign-in/first".equals(forward);
    boolean unlisted = status == 404 && address.endsWith(".yaml");
    boolean right =
        unlisted
            || (asker.role == null ? toSignIn || status == 401 || status == 403 : status == 403);
    assertThat(right).as("%s by %s: %s %s %s", address, asker, status, to, forward).isTrue();
  }

  private void close(boolean closed) {
    ClubSettings now = club.settings();
    assertThat(
            club.change(
                new ClubSettings(now.name(), closed, false, false, now.logDays(), now.version())))
        .isTrue();
  }

  private Set<String> mapped() {
    Set<String> all = new TreeSet<>();
    for (RequestMappingInfo info : mappings.getHandlerMethods().keySet()) {
      for (String pattern : info.getPatternValues()) {
        Set<RequestMethod> methods = info.getMethodsCondition().getMethods();
        if (methods.isEmpty()) {
          all.add("ANY " + pattern);
        }
        methods.forEach(method -> all.add(method + " " + pattern));
      }
    }
    // The container comes here to have an error rendered; asked for directly, it is no page.
    all.remove("ANY /error");
    return all;
  }

  private static Map<String, String> table() throws IOException {
    Map<String, String> table = new LinkedHashMap<>();
    for (String line : Files.readAllLines(TABLE)) {
      if (!line.isBlank() && !line.startsWith("#")) {
        String[] parts = line.split(" +");
        assertThat(table.put(parts[1] + " " + parts[2], parts[0])).as(line).isNull();
      }
    }
    return table;
  }
}
