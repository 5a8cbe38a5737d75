package club.yearline.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** What an airframe may be, asked by programs. */
class SpotApiTest extends ApiCalls {

  private static final String SPOT = "/api/v1/spot";

  @Test
  void ranksVariantsAndYearsByWhatWasSeen() {
    Answer answer =
        post(
                SPOT,
                """
                {"family": "turnstone", "visibility": "close", "observations": [
                  {"feature": "landing-light", "value": "nose-bowl"}]}
                """)
            .ok();
    assertThat(answer.json().propertyNames())
        .containsExactly("revision", "candidates", "more", "next", "leftOut", "caution");
    assertThat(answer.at("/revision").asInt()).isEqualTo(NEWEST);
    assertThat(answer.at("/caution").asString()).contains("Reference only");
    assertThat(answer.at("/candidates/0").propertyNames())
        .containsExactly("variant", "year", "share", "for", "against");
    List<JsonNode> all = answer.at("/candidates").valueStream().toList();
    assertThat(all.stream().mapToDouble(c -> c.get("share").asDouble()).sum())
        .isEqualTo(1, within(1e-9));
    assertThat(all).isSortedAccordingTo((a, b) -> -Double.compare(share(a), share(b)));
    assertThat(all.get(0).get("variant").asString()).isEqualTo("la-2b");
    assertThat(all.get(all.size() - 1).get("against").toString()).isEqualTo("[\"landing-light\"]");
  }

  private static double share(JsonNode candidate) {
    return candidate.get("share").asDouble();
  }

  @Test
  void asksNextOnlyWhatCanBeSeenFromThere() {
    Answer ramp = post(SPOT, "{\"family\": \"turnstone\", \"visibility\": \"ramp\"}").ok();
    Answer all = post(SPOT, "{\"family\": \"turnstone\"}").ok();
    assertThat(next(ramp)).isNotEmpty().doesNotContain("gross-weight");
    assertThat(next(all)).contains("gross-weight").containsAll(next(ramp));
    String best = next(ramp).get(0);
    Answer skipping =
        post(
                SPOT,
                "{\"family\": \"turnstone\", \"visibility\": \"ramp\", \"skip\": [\"%s\"]}"
                    .formatted(best))
            .ok();
    assertThat(next(skipping)).isNotEmpty().doesNotContain(best);
  }

  private static List<String> next(Answer answer) {
    return answer.at("/next").valueStream().map(n -> n.get("feature").asString()).toList();
  }

  @Test
  void looksThroughAllFamiliesWhereNoneIsGivenAndListsAsManyAsAreWanted() {
    Answer all = post(SPOT, "{}").ok();
    assertThat(all.at("/candidates").findValuesAsString("variant"))
        .contains("la-2b", "la-5", "la-7");
    assertThat(all.at("/more").asInt()).isZero();
    Answer few = post(SPOT, "{\"limit\": 3}").ok();
    assertThat(few.at("/candidates").size()).isEqualTo(3);
    assertThat(few.at("/more").asInt()).isEqualTo(all.at("/candidates").size() - 3);
    assertThat(few.at("/candidates/0")).isEqualTo(all.at("/candidates/0"));
  }

  @Test
  void answersFromTheRevisionAskedFor() {
    Answer small = post(SPOT + "?rev=2", "{\"family\": \"whimbrel\"}").ok();
    assertThat(small.at("/revision").asInt()).isEqualTo(2);
    assertThat(small.at("/candidates").findValuesAsString("year")).containsExactly("1961", "1962");
  }

  @ParameterizedTest
  @ValueSource(strings = {"108.50", "\"108.5\"", "108.5", "\"+108.500\"", "1.085e2"})
  void readsNumbersAsNumbersOrTexts(String value) {
    Answer answer =
        post(
                SPOT + "?rev=2",
                "{\"observations\": [{\"feature\": \"power\", \"value\": %s}]}".formatted(value))
            .ok();
    assertThat(answer.at("/candidates/0/variant").asString()).isEqualTo("la-5");
    // 35 were built in 1961, 40 with 1962; of the others 20 had another engine, of 30 it is
    // unknown.
    double asBuilt = 0.99 + 0.01 / 3;
    double all = 40 * asBuilt + 20 * 0.01 / 3 + 30 / 3.0;
    assertThat(answer.at("/candidates/0/share").asDouble())
        .isEqualTo(35 * asBuilt / all, within(1e-9));
  }

  @Test
  void ranksNothingInAnEmptyCatalogue() {
    Answer answer = post(SPOT + "?rev=0", "{}").ok();
    assertThat(answer.at("/candidates").isEmpty()).isTrue();
    assertThat(answer.at("/next").isEmpty()).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{\"famly\": \"turnstone\"} | famly",
        "{\"family\": [1]} | family",
        "{\"limit\": \"many\"} | limit",
        "{\"skip\": [1]} | skip[0]",
        "{\"observations\": 1} | observations",
        "{\"observations\": [1]} | observations[0]",
        "{\"observations\": [{\"feature\": \"fin-shape\", \"value\": true}]} | observations[0].value",
        "{\"observations\": [{\"value\": \"x\", \"colour\": 1}]} | observations[0].colour, observations[0].feature"
      })
  void whatCannotBeUnderstoodNamesTheMember(String body, String fields) {
    post(SPOT, body).problem(400, "fields-at-fault").about(fields.split(", "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{\"family\": \"nothing\"} | family",
        "{\"visibility\": \"afar\"} | visibility",
        "{\"limit\": 10001} | limit",
        "{\"limit\": -1} | limit",
        "{\"skip\": [\"fin-shape\", \"nothing\"]} | skip[1]",
        "{\"observations\": [{\"feature\": \"nothing\", \"value\": \"x\"}]} | observations[0].feature",
        "{\"observations\": [{\"feature\": \"fin-shape\", \"value\": \"x\"}]} | observations[0].value",
        "{\"observations\": [{\"feature\": \"gross-weight\", \"value\": \"much\"}]} | observations[0].value",
        "{\"observations\": [{\"feature\": \"gross-weight\", \"value\": 1e999999}]} | observations[0].value",
        "{\"family\": \"nothing\", \"observations\": [{\"feature\": \"fin-shape\", \"value\": \"swept\"},"
            + " {\"feature\": \"fin-shape\", \"value\": \"swept\"}]} | observations[1].feature, family"
      })
  void whatDoesNotExistNamesTheMember(String body, String fields) {
    post(SPOT, body).problem(422, "fields-at-fault").about(fields.split(", "));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "[", "[]", "5", "null", "{} {}", "{\"limit\": 1, \"limit\": 2}"})
  void aBodyThatIsNoObjectIsRefused(String body) {
    post(SPOT, body).problem(400, "body-unreadable");
  }

  @Test
  void moreObservationsThanAnybodyMakesAreRefused() {
    String many =
        IntStream.range(0, 500)
            .mapToObj(i -> "{\"feature\": \"f" + i + "\", \"value\": \"v\"}")
            .collect(Collectors.joining(",", "{\"observations\": [", "]}"));
    Answer answer = post(SPOT, many).problem(422, "fields-at-fault");
    assertThat(answer.at("/errors").size()).isLessThanOrEqualTo(20);
    post(SPOT, "{\"family\": \"" + "x".repeat(1_000_001) + "\"}").problem(413, "too-large");
  }

  @Test
  void onlyJsonIsRead() {
    post(SPOT, "text/plain", "{}").problem(415, "media-type-unsupported");
    get(SPOT).problem(405, "method-not-allowed");
  }
}
