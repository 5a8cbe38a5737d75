package club.yearline.api;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a typed text may mean. */
class ResolveApiTest extends ApiCalls {

  @Test
  void aSerialComesWithItsPlace() {
    Answer answer = get("/api/v1/resolve?q=lt412").ok();
    assertThat(answer.json().propertyNames())
        .containsExactly("revision", "q", "matches", "unread", "more");
    assertThat(answer.at("/matches/0/kind").asString()).isEqualTo("serial");
    assertThat(answer.at("/matches/0/serial").asString()).isEqualTo("LT-0412");
    assertThat(answer.at("/matches/0/variant").asString()).isEqualTo("la-2b");
    assertThat(answer.at("/matches/0/year").asInt()).isEqualTo(1966);
    assertThat(answer.at("/matches/0/block/variant").asString()).isEqualTo("la-2b");
    assertThat(answer.at("/matches/0/guess").asBoolean()).isFalse();
  }

  @Test
  void aSerialInNoBlockComesWithTheNearestOnes() {
    Answer answer = get("/api/v1/resolve?q=LT-0035&rev=2").ok();
    assertThat(answer.at("/matches/0/below/last").asString()).isEqualTo("LT-0030");
    assertThat(answer.at("/matches/0/above/first").asString()).isEqualTo("LT-0041");
    assertThat(answer.at("/matches/0").has("block")).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "LA-2B 1966, variant-year",
    "LA-2B, variant",
    "Turnstone, family",
    "Lindmark Aero, maker",
    "door latch, feature",
    "door lach, feature",
  })
  void wordsAreFoundForWhatTheyAre(String words, String kind) {
    Answer answer = get("/api/v1/resolve?q=" + words.replace(" ", "%20")).ok();
    assertThat(answer.at("/matches").valueStream().map(m -> m.get("kind").asString()))
        .contains(kind);
  }

  @Test
  void aSlipOfThePenIsAGuess() {
    Answer answer = get("/api/v1/resolve?q=door%20lach").ok();
    assertThat(answer.at("/matches/0/guess").asBoolean()).isTrue();
    assertThat(answer.at("/matches/0/key").asString()).isEqualTo("door-latch");
  }

  @Test
  void wordsThatNothingResemblesAreNamed() {
    Answer answer = get("/api/v1/resolve?q=xyzzy").ok();
    assertThat(answer.at("/matches")).isEmpty();
    assertThat(answer.at("/unread/0").asString()).isEqualTo("xyzzy");
  }

  @Test
  void aTextIsNeeded() {
    get("/api/v1/resolve").problem(400, "parameter-missing").about("q");
    assertThat(get("/api/v1/resolve?q=").ok().at("/matches")).isEmpty();
  }

  @Test
  void anOverlongTextIsRefusedWithTheLimit() {
    Answer answer =
        get("/api/v1/resolve?q=" + "x".repeat(5000)).problem(400, "query-too-long").about("q");
    assertThat(answer.at("/detail").asString()).contains("5000");
    assertThat(answer.text()).hasSizeLessThan(1000);
  }

  @Test
  void markupIsTextLikeAnyOther() {
    Answer answer = get("/api/v1/resolve?q=%3Cscript%3Ealert(1)%3C/script%3E").ok();
    assertThat(answer.at("/q").asString()).isEqualTo("<script>alert(1)</script>");
    assertThat(answer.header("X-Content-Type-Options")).isEqualTo("nosniff");
  }
}
