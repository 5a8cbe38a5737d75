package club.yearline.api;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.effectivity.Family;
import club.yearline.effectivity.Records;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.Variant;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Real answers hold to the published description, and the description to real answers. */
class DescriptionTest extends ApiCalls {

  private static final JsonMapper JSON = new JsonMapper();

  private static Contract contract;
  private static final Map<String, Integer> asked = new HashMap<>();

  @BeforeEach
  void read() {
    if (contract == null) {
      contract = new Contract(get("/api/openapi").ok().text());
    }
  }

  @Test
  void itDescribesThisVersionOfTheApiAndNoOther() {
    assertThat(contract.document().at("/openapi").asString()).startsWith("3.1");
    assertThat(contract.document().at("/info/version").asString()).isEqualTo("1");
    assertThat(contract.paths())
        .containsExactlyInAnyOrder(
            "/api/v1/families",
            "/api/v1/families/{key}",
            "/api/v1/variants/{key}",
            "/api/v1/features/{key}",
            "/api/v1/changes/{key}",
            "/api/v1/sources/{key}",
            "/api/v1/resolve",
            "/api/v1/expected",
            "/api/v1/timeline",
            "/api/v1/differences",
            "/api/v1/impact",
            "/api/v1/findings",
            "/api/v1/package",
            "/api/v1/spot",
            "/api/v1/cut-in",
            "/api/v1/inspect");
  }

  @Test
  void everyReferenceLeadsSomewhere() {
    List<JsonNode> references = contract.document().findValues("$ref");
    assertThat(references).hasSizeGreaterThan(100);
    for (JsonNode reference : references) {
      JsonNode there = contract.document().at(reference.asString().substring(1));
      assertThat(there.isMissingNode()).as(reference.asString()).isFalse();
    }
  }

  /** Members may be added, never renamed: the file lists those that programs rely on. */
  @Test
  void noMemberThatProgramsRelyOnIsRenamedOrChangesItsType() throws IOException {
    List<String> reliedOn = Files.readAllLines(Path.of("src/test/resources/api/members.txt"));
    List<String> described =
        contract.members().entrySet().stream().map(m -> m.getKey() + ": " + m.getValue()).toList();
    assertThat(described).containsAll(reliedOn);
    assertThat(described)
        .as("A new member is to be added to the file, so that it stays")
        .hasSameSizeAs(reliedOn);
  }

  @Test
  void everyCallIsAnsweredAsDescribedOnTheDemo() {
    Set<String> answered = new TreeSet<>();
    for (String address : questions(1)) {
      answered.add(contract.template(address) + " " + checked(address));
    }
    for (String path : contract.paths()) {
      if (!path.endsWith("/impact")) {
        assertThat(answered).contains(path + " 200");
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 2, 3, 4, 5, 6})
  void everyCallIsAnsweredAsDescribedOnOddCatalogues(int revision) {
    questions(revision).forEach(this::checked);
  }

  @ParameterizedTest
  @MethodSource("impacts")
  void theImpactBetweenAnyRevisionsIsAsDescribed(String address) {
    assertThat(checked(address)).isEqualTo(200);
  }

  static Stream<String> impacts() {
    return Stream.of("0&to=1", "1&to=2", "2&to=3", "3&to=4", "5&to=4", "6&to=7", "1&to=7")
        .map(revisions -> "/api/v1/impact?from=" + revisions);
  }

  @ParameterizedTest
  @MethodSource("badQuestions")
  void whatIsNotAnsweredIsAProblemAsDescribed(int status, String address) {
    assertThat(checked(address)).as(address).isEqualTo(status);
  }

  static Stream<Arguments> badQuestions() {
    return BadQuestions.all().map(q -> Arguments.of(q.status(), q.address()));
  }

  @Test
  void everyCallRefusesAnUnknownRevisionAnUnreadableOneAndAnUnknownForm() {
    for (String path : contract.paths()) {
      String address = example(path);
      String revision = path.endsWith("/impact") ? "to=1&from=" : "rev=";
      String bare = path.endsWith("/impact") ? "/api/v1/impact" : address;
      String with = bare + (bare.contains("?") ? "&" : "?") + revision;
      assertThat(checked(with + "99" + body(path))).as(with).isEqualTo(404);
      assertThat(checked(with + "newest" + body(path))).as(with).isEqualTo(400);
      if (!contract.isRead(path)) {
        continue;
      }
      Answer other = get(address, "Accept", "text/html");
      assertThat(contract.faults(address, other)).as(address).isEmpty();
      assertThat(other.status()).as(address).isEqualTo(406);
    }
  }

  @Test
  void everyCallSparesAProgramWhatItAlreadyHas() {
    for (String path : contract.paths().stream().filter(contract::isRead).toList()) {
      String address = example(path);
      Answer again = get(address, "If-None-Match", get(address).header("ETag"));
      assertThat(again.status()).as(address).isEqualTo(304);
      assertThat(contract.faults(address, again)).as(address).isEmpty();
    }
  }

  @Test
  void theExamplesOfTheDescriptionAreAnswered() {
    for (String path : contract.paths()) {
      String question = example(path) + body(path);
      assertThat(checked(question)).as(question).isEqualTo(200);
    }
  }

  /** The example of a call's body, as questions carry it; nothing for a call without one. */
  private static String body(String path) {
    return contract.isRead(path) ? "" : " " + contract.exampleBody(path);
  }

  /** The address of a call with the example of each parameter. */
  private static String example(String path) {
    String address = path;
    for (JsonNode parameter : contract.operation(path).path("parameters")) {
      String name = parameter.get("name").asString();
      String value = encoded(parameter.path("example").asString(""));
      address = address.replace("{" + name + "}", value);
      if (parameter.get("in").asString().equals("query") && !value.isEmpty()) {
        address += (address.contains("?") ? "&" : "?") + name + "=" + value;
      }
    }
    return address;
  }

  @Test
  void noMemberIsDescribedThatNeverOccurs() {
    IntStream.range(0, NEWEST).mapToObj(this::questions).forEach(q -> q.forEach(this::checked));
    impacts().forEach(this::checked);
    BadQuestions.all().forEach(q -> checked(q.address()));
    assertThat(contract.unseen()).isEmpty();
  }

  @Test
  void noStatusIsDescribedThatNeverOccurs() {
    Map<String, Set<String>> occurred = new TreeMap<>();
    Stream.concat(
            BadQuestions.all().map(BadQuestions.BadQuestion::address),
            contract.paths().stream().map(path -> example(path) + body(path)))
        .forEach(
            address ->
                occurred
                    .computeIfAbsent(contract.template(address), path -> new TreeSet<>())
                    .add(String.valueOf(checked(address))));
    for (String path : contract.paths()) {
      // Those that hold for every call have tests of their own.
      Set<String> own = contract.statuses(path);
      own.removeAll(Set.of("304", "400", "401", "404", "406", "413", "415"));
      assertThat(occurred.get(path)).as(path).containsAll(own);
      assertThat(contract.statuses(path))
          .as(path)
          .contains("400", "401", "404", "406")
          .contains(contract.isRead(path) ? new String[] {"304"} : new String[] {"413", "415"});
    }
  }

  @Test
  void everyParameterIsDescribedInWords() {
    for (String path : contract.paths()) {
      assertThat(contract.operation(path).get("summary").asString()).as(path).isNotBlank();
      for (JsonNode parameter : contract.operation(path).path("parameters")) {
        assertThat(parameter.path("description").asString("")).as(path).isNotBlank();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("bodies")
  void aBodyThatIsNotAsDescribedIsNoticed(String address) {
    Answer answer = get(address);
    String path = contract.template(address);
    JsonNode schema = contract.schema(path, String.valueOf(answer.status()), answer.type());
    List<Mutation> mutations = Mutation.all(answer.json());
    assertThat(mutations).hasSizeGreaterThan(10);
    for (Mutation mutation : mutations) {
      assertThat(contract.faults(schema, mutation.body())).as(mutation.what()).isNotEmpty();
    }
  }

  static Stream<String> bodies() {
    return Stream.of(
        "/api/v1/expected?variant=la-2&year=1956&rev=2",
        "/api/v1/variants/la-2a?rev=2",
        "/api/v1/timeline?feature=door-latch&rev=2",
        "/api/v1/impact?from=2&to=3",
        "/api/v1/expected?variant=la-2b&year=2020&rev=1",
        "/api/v1/expected?rev=1");
  }

  /** Asks, unless it was asked before, and holds the answer to the description. */
  private int checked(String address) {
    return asked.computeIfAbsent(
        address,
        a -> {
          Answer answer = ask(a);
          assertThat(contract.faults(a, answer)).as(a).isEmpty();
          if (answer.status() == 200 && a.contains(" ")) {
            JsonNode body = JSON.readTree(a.substring(a.indexOf(' ')));
            assertThat(contract.faultsOfQuestion(contract.template(a), body)).as(a).isEmpty();
          }
          return answer.status();
        });
  }

  /** Questions of every kind to the catalogue of a revision, most of them with an answer. */
  private List<String> questions(int revision) {
    Records records = records(revision);
    List<String> all = new ArrayList<>();
    all.add("/families");
    all.add("/findings");
    all.add("/package");
    records.families().forEach(f -> all.add("/families/" + f.key()));
    records.variants().forEach(v -> all.add("/variants/" + v.key()));
    records.features().forEach(f -> all.add("/features/" + f.key()));
    records.changes().forEach(c -> all.add("/changes/" + c.key()));
    records.sources().forEach(s -> all.add("/sources/" + s.key()));
    records.features().forEach(f -> all.add("/timeline?feature=" + f.key()));
    records.variants().forEach(v -> all.addAll(years(v)));
    records.blocks().forEach(b -> all.addAll(serials(b)));
    all.addAll(words(records));
    Stream<String> bodies =
        Stream.of(
                SpotQuestions.of(records), CutInQuestions.of(records), InspectQuestions.of(records))
            .flatMap(each -> each);
    return Stream.concat(
            all.stream().map(q -> q + (q.contains("?") ? "&" : "?") + "rev=" + revision),
            bodies.map(q -> q.replaceFirst(" ", "?rev=" + revision + " ")))
        .map(q -> "/api/v1" + q)
        .toList();
  }

  private static List<String> years(Variant variant) {
    List<String> all = new ArrayList<>();
    variant
        .runs()
        .forEach(
            run -> {
              String of = "/expected?neighbours=true&variant=" + variant.key() + "&year=";
              all.add(of + run.firstYear());
              all.add(of + (run.firstYear() + 1));
              all.add(of + (run.firstYear() - 1));
              all.add(
                  "/differences?from="
                      + variant.key()
                      + ":"
                      + run.firstYear()
                      + "&to="
                      + variant.key()
                      + ":"
                      + (run.firstYear() + 2));
            });
    return all;
  }

  private static List<String> serials(SerialBlock block) {
    String first = encoded(block.firstSerial());
    return List.of(
        "/expected?serial=" + first,
        "/expected?neighbours=true&serial=" + first + "&variant=" + block.variant(),
        "/expected?serial=" + first + "&variant=" + block.variant() + "&year=1961",
        "/expected?serial="
            + first
            + "&variant="
            + block.variant()
            + (block.year() == null ? "" : "&year=" + block.year()),
        "/resolve?q=" + first);
  }

  private static List<String> words(Records records) {
    return Stream.of(
            records.families().stream().map(Family::name),
            records.families().stream().map(Family::maker),
            records.variants().stream().map(v -> v.designation() + " 1958"),
            records.features().stream().map(f -> f.name()),
            records.features().stream().flatMap(f -> f.values().stream()).map(v -> v.label()),
            records.retrofits().stream().map(r -> r.document()),
            records.sources().stream().map(s -> s.source().title()),
            Stream.of("", "1966", "door lach", "LT-9999", "LT-0035", "xyzzy plugh"))
        .flatMap(words -> words)
        .distinct()
        .map(words -> "/resolve?q=" + encoded(words))
        .toList();
  }

  private static String encoded(String text) {
    return URLEncoder.encode(
        text.length() <= 100 ? text : text.substring(0, 100), StandardCharsets.UTF_8);
  }
}
