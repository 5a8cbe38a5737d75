package club.yearline.api;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** Inspections over the API, against the demo. */
class InspectApiTest extends ApiCalls {

  private static final String INSPECT = "/api/v1/inspect";

  @Test
  void answersAsTheFormatShows() {
    Answer answer =
        post(
                INSPECT,
                """
                {"variant": "la-2b", "year": 1966, "serial": "LT-0412", "observations": [
                  {"feature": "rear-window", "value": "wraparound"},
                  {"feature": "landing-light", "value": "nose-bowl"}]}
                """)
            .ok();
    assertThat(answer.json().propertyNames())
        .containsSubsequence(
            "revision", "verdict", "claim", "bestOther", "findings", "mandatory", "caution");
    assertThat(answer.at("/revision").asInt()).isEqualTo(NEWEST);
    assertThat(answer.at("/claim/variant").asString()).isEqualTo("la-2b");
    assertThat(answer.at("/claim/year").asInt()).isEqualTo(1966);
    assertThat(answer.at("/claim/share").asDouble()).isBetween(0.0, 1.0);
    assertThat(answer.at("/caution").asString()).contains("Reference only");
    JsonNode window = answer.at("/findings/0");
    assertThat(window.get("feature").asString()).isEqualTo("rear-window");
    assertThat(window.get("observed").asString()).isEqualTo("wraparound");
    assertThat(window.get("finding").asString()).isEqualTo("differs");
    assertThat(window.at("/asBuiltAt/0").propertyNames())
        .containsExactly("variant", "firstYear", "lastYear");
    assertThat(window.get("exchange").asString()).isEqualTo("major-work");
    assertThat(window.get("ask").asString()).contains("Rear window");
    assertThat(answer.at("/findings/1/finding").asString()).isEqualTo("as-built");
    assertThat(answer.at("/findings/1").has("ask")).isFalse();
  }

  @Test
  void aSerialAloneIsEnoughAndANumberIsANumber() {
    Answer answer =
        post(
                INSPECT,
                """
                {"serial": "lt 412", "observations": [{"feature": "power", "value": 145.0}]}
                """)
            .ok();
    assertThat(answer.at("/claim/serial").asString()).isEqualTo("LT-0412");
    assertThat(answer.at("/findings/0/observed").isNumber()).isTrue();
    assertThat(answer.at("/findings/0/observed").asDouble()).isEqualTo(145);
  }

  @Test
  void nothingSeenIsTooLittle() {
    Answer answer = post(INSPECT, "{\"variant\": \"la-2b\", \"year\": 1966}").ok();
    assertThat(answer.at("/verdict").asString()).isEqualTo("too-little");
    assertThat(answer.at("/findings").size()).isZero();
  }

  @Test
  void refusesAsExpectedDoesAndNamesWhatIsAtFault() {
    post(INSPECT, "{\"serial\": \"LT-1300\"}").problem(422, "serial-ambiguous").about("serial");
    post(INSPECT, "{\"serial\": \"ZZ-1\"}").problem(404, "serial-in-no-series").about("serial");
    post(
            INSPECT,
            """
            {"serial": "LT-0412", "observations": [
              {"feature": "door-latch", "value": "hook"},
              {"feature": "door-latch", "value": "rotary"}, {"feature": "no", "value": "x"}]}
            """)
        .problem(422, "fields-at-fault")
        .about("observations[1].feature", "observations[2].feature");
  }
}
