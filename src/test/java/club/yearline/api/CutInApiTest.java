package club.yearline.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** Cut-ins estimated over the API, on the demo. */
class CutInApiTest extends ApiCalls {

  private static final String CUT_IN = "/api/v1/cut-in";

  /**
   * The example of the format. The record leaves LT-0398 to LT-0501 (the first of 1966 and of
   * 1967); of these 104, 57 to the last are of equal density for a cut-in at one serial.
   */
  @Test
  void theExampleOfTheFormatIsAnsweredInItsShape() {
    JsonNode answer = latch(seen("LT-0398", "old"), seen("LT-0455", "new")).json();
    assertThat(answer.at("/revision").asInt()).isEqualTo(NEWEST);
    assertThat(answer.at("/candidates/first").asString()).isEqualTo("LT-0398");
    assertThat(answer.at("/candidates/last").asString()).isEqualTo("LT-0501");
    assertThat(answer.at("/clean/mostProbable/first").asString()).isEqualTo("LT-0399");
    assertThat(answer.at("/clean/mostProbable/last").asString()).isEqualTo("LT-0455");
    assertThat(answer.at("/clean/credible95/0/first").asString()).isEqualTo("LT-0399");
    assertThat(answer.at("/window/first/first").asString()).isEqualTo("LT-0399");
    assertThat(answer.at("/window/settled/last").asString()).isEqualTo("LT-0455");
    assertThat(answer.at("/models/clean").asDouble() + answer.at("/models/window").asDouble())
        .isCloseTo(1, within(1e-12));
    assertThat(answer.at("/exchanged")).isEmpty();
    assertThat(answer.at("/airframes").asInt()).isEqualTo(2);
    assertThat(answer.at("/caution").asString()).contains("not approved data");
  }

  /**
   * Worked out by hand: candidates LT-0600 and LT-0601, both airframes at LT-0600 (1968, where no
   * kit is recorded: x is 0.05). Clean: 39/1600 for both; the one window: 1/4. The factor is
   * 39/400.
   */
  @Test
  void theFactorIsThatWorkedOutByHand() {
    JsonNode answer =
        ask(CUT_IN
                + " "
                + body(
                    "\"lo\": \"LT-0600\", \"hi\": \"LT-0601\",",
                    seen("LT-0600", "old"),
                    seen("LT-0600A", "rotary")))
            .ok()
            .json();
    assertThat(answer.at("/bayesFactor").asDouble()).isCloseTo(39.0 / 400, within(1e-12));
    assertThat(answer.at("/log10BayesFactor").asDouble())
        .isCloseTo(Math.log10(39.0 / 400), within(1e-12));
    assertThat(answer.at("/models/clean").asDouble()).isCloseTo(39.0 / 439, within(1e-12));
  }

  @Test
  void aValueMayBeGivenByItsKey() {
    JsonNode words = latch(seen("LT-0410", "old"), seen("LT-0455", "new")).json();
    JsonNode keys = latch(seen("LT-0410", "hook"), seen("LT-0455", "rotary")).json();
    assertThat(keys).isEqualTo(words);
  }

  @Test
  void anAirframeCountsOnceByTheLastThatIsGiven() {
    JsonNode answer =
        latch(seen("LT-0410", "new"), seen("lt 410", "old"), seen("LT-0455", "new")).json();
    assertThat(answer.at("/airframes").asInt()).isEqualTo(2);
    assertThat(answer.at("/leftOut/superseded").asInt()).isEqualTo(1);
    assertThat(answer.at("/clean/mostProbable/first").asString()).isEqualTo("LT-0411");
  }

  @Test
  void anExchangedPartIsNamed() {
    JsonNode answer =
        latch(
                seen("LT-0120", "new"),
                seen("LT-0398", "old"),
                seen("LT-0420", "old"),
                seen("LT-0455", "new"))
            .json();
    assertThat(answer.at("/exchanged")).hasSize(1);
    assertThat(answer.at("/exchanged/0/serial").asString()).isEqualTo("LT-0120");
    assertThat(answer.at("/exchanged/0/value").asString()).isEqualTo("new");
    assertThat(answer.at("/exchanged/0/chance").asDouble()).isEqualTo(1);
  }

  @Test
  void oneCandidateLeavesOnlyTheCleanModel() {
    JsonNode answer =
        ask(CUT_IN + " " + body("\"lo\": \"LT-0430\", \"hi\": \"LT-0430\",")).ok().json();
    assertThat(answer.at("/models/clean").asDouble()).isEqualTo(1);
    assertThat(answer.has("window")).isFalse();
    assertThat(answer.has("bayesFactor")).isFalse();
  }

  @Test
  void aFactorTooSmallToBeWrittenIsToldByItsLogarithm() {
    String[] mixed =
        IntStream.range(0, 3000)
            .mapToObj(i -> seen("LT-0450" + (char) ('A' + i % 26), "old"))
            .toArray(String[]::new);
    // One serial with each letter: only 26 airframes count.
    JsonNode few = latch(mixed).json();
    assertThat(few.at("/airframes").asInt()).isEqualTo(26);
    String[] many =
        IntStream.range(0, 9000)
            .mapToObj(i -> seen("LT-" + (1_000_000 + i), i % 2 == 0 ? "old" : "new"))
            .toArray(String[]::new);
    JsonNode answer =
        ask(CUT_IN + " " + body("\"lo\": \"LT-0001\", \"hi\": \"LT-99999999\",", many)).ok().json();
    assertThat(answer.has("bayesFactor")).isFalse();
    assertThat(answer.at("/log10BayesFactor").asDouble()).isLessThan(-1000);
    assertThat(answer.at("/models/window").asDouble()).isEqualTo(1);
  }

  @Test
  void tooManyObservationsAreRefused() {
    String[] many =
        IntStream.range(0, 10_001).mapToObj(i -> seen("LT-" + i, "old")).toArray(String[]::new);
    ask(CUT_IN + " " + body("", many)).problem(400, "observations-many").about("observations");
    String[] more =
        IntStream.range(0, 100_000).mapToObj(i -> seen("LT-" + i, "old")).toArray(String[]::new);
    ask(CUT_IN + " " + body("", more)).problem(413, "too-large");
  }

  @Test
  void allThatIsWrongWithTheObservationsIsSaidAtOnce() {
    ask(CUT_IN + " " + body("", seen("W-660001", "old"), seen("LT-0398", "newer")))
        .problem(422, "fields-at-fault")
        .about("observations[0].serial", "observations[1].value");
  }

  @ParameterizedTest
  @CsvSource({
    "la-2, 422, change-not-of-variant, variant",
    "la-2c, 422, cut-in-at-start, variant",
    "nothing, 404, unknown-variant, variant",
  })
  void aVariantWithoutACutInIsRefused(String variant, int status, String kind, String field) {
    ask(CUT_IN + " {\"change\": \"door-latch-rotary\", \"variant\": \"" + variant + "\"}")
        .problem(status, kind)
        .about(field);
  }

  @Test
  void boundsTheWrongWayRoundAreRefused() {
    ask(CUT_IN + " " + body("\"lo\": \"LT-0500\", \"hi\": \"LT-0400\","))
        .problem(422, "bounds-reversed")
        .about("lo", "hi");
  }

  @Test
  void anAnswerIsKeptNowhere() {
    Answer answer = ask(CUT_IN + "?rev=1 " + body("")).ok();
    assertThat(answer.header("Cache-Control")).isEqualTo("no-store");
    assertThat(answer.header("ETag")).isNull();
  }

  private Answer latch(String... observations) {
    return ask(CUT_IN + " " + body("", observations)).ok();
  }

  private static String body(String members, String... observations) {
    return "{\"change\": \"door-latch-rotary\", \"variant\": \"la-2b\", "
        + members
        + " \"observations\": "
        + java.util.Arrays.stream(observations).collect(Collectors.joining(", ", "[", "]"))
        + "}";
  }

  private static String seen(String serial, String value) {
    return "{\"serial\": \"" + serial + "\", \"value\": \"" + value + "\"}";
  }
}
