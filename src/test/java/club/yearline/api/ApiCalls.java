package club.yearline.api;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.catalog.Edition;
import club.yearline.catalog.EntryRef;
import club.yearline.catalog.PictureFile;
import club.yearline.catalog.Publication;
import club.yearline.catalog.Snapshots;
import club.yearline.effectivity.Records;
import club.yearline.testing.Catalogues;
import club.yearline.testing.Database;
import club.yearline.testing.SmallCatalogue;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The whole application with the demo catalogue as revision 1. Revision 2 is a small odd catalogue,
 * the next ones are random, and the newest is the demo again. The tests share one application.
 */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
@AutoConfigureMockMvc
abstract class ApiCalls {

  /** The newest revision. */
  static final int NEWEST = 7;

  private static final int FIRST_RANDOM = 3;

  private static final JsonMapper JSON = new JsonMapper();

  @Autowired private MockMvc mvc;
  @Autowired private Publication publication;
  @Autowired Snapshots snapshots;

  @DynamicPropertySource
  static void settings(DynamicPropertyRegistry registry) {
    Database database = Database.h2();
    registry.add("spring.datasource.url", database::url);
    registry.add("spring.datasource.username", database::user);
    registry.add("spring.datasource.password", database::password);
  }

  @BeforeEach
  void publishOddRevisions() {
    if (snapshots.head().number() > 1) {
      return;
    }
    publishInstead(SmallCatalogue.records());
    for (int revision = FIRST_RANDOM; revision < NEWEST; revision++) {
      publishInstead(Catalogues.random(revision));
    }
    publishInstead(records(1));
  }

  Records records(int revision) {
    return snapshots.at(revision).catalogue().records();
  }

  /** Publishes these entries and takes all others out; pictures stay, for the demo to come back. */
  private void publishInstead(Records records) {
    Records before = snapshots.head().catalogue().records();
    Set<EntryRef> gone = new HashSet<>(before.entries().stream().map(EntryRef::of).toList());
    records.entries().stream().map(EntryRef::of).forEach(gone::remove);
    List<String> known = before.pictures().stream().map(p -> p.name()).toList();
    List<PictureFile> pictures =
        records.pictures().stream()
            .filter(p -> !known.contains(p.name()))
            .map(p -> new PictureFile(p.name(), p.mediaType(), Catalogues.pictureBytes(p.name())))
            .toList();
    publication.publish(
        Edition.of("Odd", "Åsa", records.entries()).withdrawing(gone).withPictures(pictures));
  }

  /** The answer to an address, given as it is written after the host. */
  Answer get(String address) {
    return answer(MockMvcRequestBuilders.get(URI.create(address)));
  }

  /** The answer to a GET with a header. */
  Answer get(String address, String header, String value) {
    return answer(MockMvcRequestBuilders.get(URI.create(address)).header(header, value));
  }

  /** The answer to a body sent to an address. */
  Answer post(String address, String body) {
    return post(address, "application/json", body);
  }

  /** The answer to a body of any kind. */
  Answer post(String address, String type, String body) {
    return answer(MockMvcRequestBuilders.post(URI.create(address)).contentType(type).content(body));
  }

  /** The answer to a question: an address, and for a call with a body a blank and the body. */
  Answer ask(String question) {
    String[] parts = question.split(" ", 2);
    return parts.length == 1 ? get(question) : post(parts[0], parts[1]);
  }

  private Answer answer(MockHttpServletRequestBuilder request) {
    try {
      return new Answer(mvc.perform(request).andReturn().getResponse());
    } catch (Exception e) {
      throw new AssertionError("The call failed", e);
    }
  }

  /** What came back. */
  record Answer(MockHttpServletResponse response) {

    int status() {
      return response.getStatus();
    }

    String type() {
      return String.valueOf(response.getContentType());
    }

    String header(String name) {
      return response.getHeader(name);
    }

    String text() {
      return new String(response.getContentAsByteArray(), StandardCharsets.UTF_8);
    }

    JsonNode json() {
      return JSON.readTree(response.getContentAsByteArray());
    }

    /** The member at a JSON pointer. */
    JsonNode at(String pointer) {
      return json().at(pointer);
    }

    /** This answer, which must be one. */
    Answer ok() {
      assertThat(status()).as(text()).isEqualTo(200);
      assertThat(type()).isEqualTo("application/json");
      return this;
    }

    /** This answer, which must be a problem of the given status and kind, with advice. */
    Answer problem(int status, String kind) {
      assertThat(status()).as(text()).isEqualTo(status);
      assertThat(type()).isEqualTo("application/problem+json");
      assertThat(at("/type").asString()).isEqualTo("/problems/" + kind);
      assertThat(at("/status").asInt()).isEqualTo(status);
      assertThat(at("/title").asString()).isNotBlank();
      assertThat(at("/detail").asString()).isNotBlank();
      assertThat(at("/advice").asString()).isNotBlank();
      return this;
    }

    /** This problem, which must name this parameter as being at fault, and no other. */
    Answer about(String... fields) {
      assertThat(at("/errors").valueStream().map(e -> e.get("field").asString()))
          .containsExactly(fields);
      assertThat(at("/errors").valueStream().map(e -> e.get("message").asString()))
          .allSatisfy(message -> assertThat(message).isNotBlank());
      return this;
    }
  }
}
