package club.yearline.api;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** The computed answers. */
class AnswerApiTest extends ApiCalls {

  @Test
  void aSerialAloneIsEnoughForTheExpectedConfiguration() {
    Answer answer = get("/api/v1/expected?serial=LT-0412").ok();
    assertThat(answer.json().propertyNames())
        .containsExactly("revision", "position", "block", "features", "caution");
    assertThat(answer.at("/revision").asInt()).isEqualTo(NEWEST);
    assertThat(answer.at("/position").toString())
        .isEqualTo(
            "{\"variant\":\"la-2b\",\"year\":1966,\"series\":\"lt\",\"serial\":\"LT-0412\"}");
    assertThat(answer.at("/caution").asString()).contains("Reference only");
    JsonNode light = feature(answer, "landing-light");
    assertThat(light.get("state").asString()).isEqualTo("settled");
    assertThat(light.at("/offerings/0/values/0/value").asString()).isEqualTo("nose-bowl");
    assertThat(light.at("/offerings/0/values/0/fit").asString()).isEqualTo("standard");
    assertThat(light.has("stretches")).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"lt0412", "LT%200412", "lt-412", "LT-0412%20"})
  void aSerialIsReadAsPeopleWriteIt(String serial) {
    assertThat(get("/api/v1/expected?serial=" + serial).ok().at("/position/serial").asString())
        .isEqualTo("LT-0412");
  }

  @Test
  void aVariantAndAYearAreAnsweredForAllItsSerials() {
    Answer answer = get("/api/v1/expected?variant=la-2b&year=1968").ok();
    assertThat(answer.at("/position").toString())
        .isEqualTo("{\"variant\":\"la-2b\",\"year\":1968,\"series\":null,\"serial\":null}");
    assertThat(answer.json().has("block")).isFalse();
    JsonNode engine = feature(answer, "engine");
    assertThat(engine.get("state").asString()).isEqualTo("splits");
    assertThat(engine.has("offerings")).isFalse();
    assertThat(engine.at("/stretches/0/first").asString()).isEqualTo("LT-0583");
    assertThat(engine.at("/stretches/0/last").asString()).isEqualTo("LT-0583");
    assertThat(engine.at("/stretches/0/state").asString()).isEqualTo("settled");
    assertThat(engine.at("/stretches/0/offerings/0/values/0/value").asString())
        .isEqualTo("t-4-150");
    assertThat(engine.at("/stretches/1/first").asString()).isEqualTo("LT-0599");
    assertThat(engine.at("/stretches/1/last").asString()).isEqualTo("LT-0705");
  }

  @Test
  void allThreeAreCheckedAgainstEachOther() {
    get("/api/v1/expected?serial=LT-0412&variant=la-2b&year=1966").ok();
    Answer answer =
        get("/api/v1/expected?serial=LT-0412&variant=la-2b&year=1969")
            .problem(422, "serial-contradicts")
            .about("serial");
    assertThat(answer.at("/candidates/0/variant").asString()).isEqualTo("la-2b");
    assertThat(answer.at("/candidates/0/year").asInt()).isEqualTo(1966);
  }

  @Test
  void aTransitionNamesBothOfferingsOldestFirstWithTheWindow() {
    JsonNode latch = feature(get("/api/v1/expected?variant=la-2b&year=1966").ok(), "door-latch");
    assertThat(latch.get("state").asString()).isEqualTo("transition");
    assertThat(latch.at("/offerings/0/values/0/value").asString()).isEqualTo("hook");
    assertThat(latch.at("/offerings/1/values/0/value").asString()).isEqualTo("rotary");
    assertThat(latch.at("/offerings/0").has("window")).isFalse();
    assertThat(latch.at("/offerings/1/window").propertyNames())
        .containsExactly("firstYear", "settledYear", "series", "firstSerial", "settledSerial");
    assertThat(latch.at("/offerings/1/window/settledYear").asInt()).isEqualTo(1967);
  }

  @Test
  void whatIsNotRecordedIsSaidAsSuch() {
    JsonNode beacon = feature(get("/api/v1/expected?variant=la-7&year=1969").ok(), "beacon");
    assertThat(beacon.get("state").asString()).isEqualTo("unrecorded");
    assertThat(beacon.get("offerings")).isEmpty();
    JsonNode open = feature(get("/api/v1/expected?variant=la-7&serial=D-025").ok(), "beacon");
    assertThat(open.get("state").asString()).isEqualTo("open");
    assertThat(open.at("/offerings/0").toString()).isEqualTo("{\"change\":null,\"values\":[]}");
  }

  @Test
  void aFigureIsANumberWithItsUnit() {
    JsonNode power = feature(get("/api/v1/expected?variant=la-2&year=1956&rev=2").ok(), "power");
    assertThat(power.at("/offerings/0/values/0").toString())
        .isEqualTo("{\"value\":145,\"unit\":\"hp\",\"fit\":\"standard\"}");
    assertThat(power.get("unit").asString()).isEqualTo("hp");
  }

  @Test
  void everyAnswerCarriesItsEvidence() {
    JsonNode latch =
        feature(get("/api/v1/expected?variant=la-2&year=1956&rev=2").ok(), "door-latch");
    assertThat(latch.get("grade").asString()).isEqualTo("maker-or-authority");
    assertThat(latch.get("disputed").asBoolean()).isFalse();
    assertThat(latch.at("/citations/0").toString())
        .isEqualTo("{\"source\":\"manual\",\"locator\":\"2-14\",\"stance\":\"supports\"}");
    JsonNode light =
        feature(get("/api/v1/expected?variant=la-2a&year=1960&rev=2").ok(), "landing-light");
    assertThat(light.get("disputed").asBoolean()).isTrue();
  }

  @Test
  void aRetrofitTellsItsDocumentAndWhetherItAppliesAndIsMandatory() {
    JsonNode kit =
        feature(get("/api/v1/expected?variant=la-2&year=1956&rev=2").ok(), "door-latch")
            .at("/retrofits/0");
    assertThat(kit.get("key").asString()).isEqualTo("kit");
    assertThat(kit.get("value").asString()).isEqualTo("rotary");
    assertThat(kit.get("document").asString()).isEqualTo("Kit SK-52-01");
    assertThat(kit.get("mandatory").asBoolean()).isFalse();
    assertThat(kit.get("applies").asBoolean()).isTrue();
    assertThat(kit.get("citations").isArray()).isTrue();
  }

  @Test
  void anAirworthinessDirectiveMakesARetrofitMandatory() {
    long mandatory =
        get("/api/v1/expected?variant=la-2d&year=1979")
            .ok()
            .at("/features")
            .valueStream()
            .flatMap(f -> f.get("retrofits").valueStream())
            .filter(r -> r.get("mandatory").asBoolean())
            .peek(r -> assertThat(cites(r.get("citations"), "airworthiness-directive")).isTrue())
            .count();
    assertThat(mandatory).isPositive();
  }

  private boolean cites(JsonNode citations, String kind) {
    return citations
        .valueStream()
        .map(c -> get("/api/v1/sources/" + c.get("source").asString()).ok())
        .anyMatch(source -> source.at("/kind").asString().equals(kind));
  }

  @Test
  void whenAskedItTellsWhatDifferedTheYearBeforeAndAfter() {
    Answer answer = get("/api/v1/expected?variant=la-2&year=1957&neighbours=true&rev=2").ok();
    assertThat(answer.at("/yearBefore/year").asInt()).isEqualTo(1956);
    assertThat(answer.json().has("yearAfter")).isFalse();
    assertThat(
            answer
                .at("/yearBefore/differences")
                .valueStream()
                .map(d -> d.get("feature").asString()))
        .containsExactlyInAnyOrder("door-latch", "power");
    assertThat(get("/api/v1/expected?variant=la-2&year=1957&rev=2").ok().json().propertyNames())
        .doesNotContain("yearBefore", "yearAfter");
  }

  @Test
  void withoutASerialBothVariantAndYearAreNeeded() {
    get("/api/v1/expected").problem(400, "question-incomplete").about("variant", "year");
    get("/api/v1/expected?variant=la-2b").problem(400, "question-incomplete").about("year");
    get("/api/v1/expected?year=1966").problem(400, "question-incomplete").about("variant");
    get("/api/v1/expected?serial=%20&variant=").problem(400, "question-incomplete");
  }

  @Test
  void aSerialInNoSeriesIsUnknown() {
    get("/api/v1/expected?serial=ZZ-1").problem(404, "serial-in-no-series").about("serial");
    get("/api/v1/expected?serial=ZZ-1&variant=la-2b")
        .problem(422, "serial-not-of-variant")
        .about("serial");
  }

  @Test
  void aSerialInNoBlockComesWithTheNearestBlocks() {
    Answer answer =
        get("/api/v1/expected?serial=LT-0035&rev=2")
            .problem(422, "serial-in-no-block")
            .about("serial");
    assertThat(answer.at("/candidates/0/serial").asString()).isEqualTo("LT-0035");
    assertThat(answer.at("/candidates/0/below/last").asString()).isEqualTo("LT-0030");
    assertThat(answer.at("/candidates/0/above/first").asString()).isEqualTo("LT-0041");
  }

  @Test
  void aSerialThatMayBeSeveralComesWithEachOfThem() {
    Answer answer =
        get("/api/v1/expected?serial=LT-1300").problem(422, "serial-ambiguous").about("serial");
    assertThat(answer.at("/candidates").valueStream().map(c -> c.get("variant").asString()))
        .containsExactlyInAnyOrder("la-2c", "la-2d");
    answer
        .at("/candidates")
        .forEach(
            c ->
                get("/api/v1/expected?serial=LT-1300&variant=" + c.get("variant").asString()).ok());
  }

  @Test
  void aYearOutsideProductionComesWithTheRuns() {
    Answer answer =
        get("/api/v1/expected?variant=la-2a&year=1959&rev=2")
            .problem(422, "outside-production")
            .about("year");
    assertThat(answer.at("/runs").toString())
        .isEqualTo(
            "[{\"firstYear\":1958,\"lastYear\":1958},{\"firstYear\":1960,\"lastYear\":1960}]");
    assertThat(answer.at("/detail").asString()).contains("LA-2A", "1959");
  }

  @ParameterizedTest
  @ValueSource(strings = {"recent", "1966.5", "99999999999", "%3Cb%3E"})
  void aYearThatIsNoneIsNamed(String year) {
    String shown = year.replace("%3C", "<").replace("%3E", ">");
    Answer answer =
        get("/api/v1/expected?variant=la-2b&year=" + year)
            .problem(400, "parameter-unreadable")
            .about("year");
    assertThat(answer.at("/detail").asString()).contains("“" + shown + "”", "a whole number");
  }

  @Test
  void anUnknownVariantIsNamed() {
    get("/api/v1/expected?variant=la-99&year=1966")
        .problem(404, "unknown-variant")
        .about("variant");
  }

  @Test
  void anOverlongSerialIsRefusedWithTheLimit() {
    Answer answer =
        get("/api/v1/expected?serial=" + "1".repeat(5000))
            .problem(400, "serial-too-long")
            .about("serial");
    assertThat(answer.at("/detail").asString()).contains("5000");
    assertThat(answer.text()).hasSizeLessThan(1000);
  }

  @Test
  void aTimelineGoesThroughTheYearsOfEachVariant() {
    Answer answer = get("/api/v1/timeline?feature=door-latch&rev=2").ok();
    assertThat(answer.at("/feature").asString()).isEqualTo("door-latch");
    assertThat(answer.at("/variants").valueStream().map(v -> v.get("variant").asString()))
        .containsExactly("la-2", "la-2a");
    JsonNode spans = answer.at("/variants/0/stretches");
    assertThat(spans.get(0).get("firstYear").asInt()).isEqualTo(1956);
    assertThat(spans.get(0).get("state").asString()).isEqualTo("settled");
    assertThat(spans.get(1).get("state").asString()).isEqualTo("splits");
    assertThat(spans.get(1).at("/stretches/1/first").asString()).isEqualTo("LT-0015");
  }

  @Test
  void aTimelineMayBeOfOneFamily() {
    Answer answer = get("/api/v1/timeline?feature=power&family=whimbrel&rev=2").ok();
    assertThat(answer.at("/variants").valueStream().map(v -> v.get("variant").asString()))
        .containsExactly("la-5");
    get("/api/v1/timeline").problem(400, "parameter-missing").about("feature");
    get("/api/v1/timeline?feature=nothing").problem(404, "unknown-feature").about("feature");
    get("/api/v1/timeline?feature=power&family=x&rev=2")
        .problem(404, "unknown-family")
        .about("family");
  }

  @Test
  void differencesHoldBothAnswersOfWhatDiffers() {
    Answer answer = get("/api/v1/differences?from=la-2:1956&to=la-2a:1958&rev=2").ok();
    assertThat(answer.at("/from/variant").asString()).isEqualTo("la-2");
    assertThat(answer.at("/to/year").asInt()).isEqualTo(1958);
    assertThat(answer.at("/differences").valueStream().map(d -> d.get("feature").asString()))
        .containsExactlyInAnyOrder("door-latch", "landing-light", "power");
    JsonNode light =
        answer
            .at("/differences")
            .valueStream()
            .filter(d -> d.get("feature").asString().equals("landing-light"))
            .findFirst()
            .orElseThrow();
    assertThat(light.get("from").isNull()).isTrue();
    assertThat(light.at("/to/state").asString()).isEqualTo("settled");
    assertThat(answer.at("/same").asInt()).isZero();
    assertThat(answer.at("/caution").asString()).isNotBlank();
  }

  @ParameterizedTest
  @CsvSource({
    "from=la-2b:1966, 400, parameter-missing, to",
    "from=la-2b&to=la-2b:1968, 400, variant-year-unreadable, from",
    "from=la-2b:1966&to=:, 400, variant-year-unreadable, to",
    "from=la-2b:1966&to=la-2b:late, 400, variant-year-unreadable, to",
    "from=la-99:1966&to=la-2b:1968, 404, unknown-variant, from",
    "from=la-2b:1966&to=:1968, 404, unknown-variant, to",
    "from=la-2b:1966&to=la-2b:2020, 422, outside-production, to",
  })
  void aSideThatCannotBeFoundIsNamed(String query, int status, String kind, String field) {
    get("/api/v1/differences?" + query).problem(status, kind).about(field);
  }

  @Test
  void theImpactOfAStateOnItselfIsNothing() {
    Answer answer = get("/api/v1/impact?from=1&to=1").ok();
    assertThat(answer.text()).isEqualTo("{\"from\":1,\"to\":1,\"rows\":[]}");
    assertThat(get("/api/v1/impact?from=1&to=" + NEWEST).ok().at("/rows")).isEmpty();
  }

  @Test
  void theImpactHoldsTheAnswersBeforeAndAfter() {
    Answer answer = get("/api/v1/impact?from=0&to=2").ok();
    JsonNode row = answer.at("/rows/0");
    assertThat(row.get("kind").asString()).isEqualTo("appears");
    assertThat(row.get("before").isNull()).isTrue();
    assertThat(row.at("/after/feature").asString()).isEqualTo(row.get("feature").asString());
    assertThat(row.get("airframesBefore").asDouble()).isZero();
    assertThat(get("/api/v1/impact?from=2&to=0").ok().at("/rows/0/kind").asString())
        .isEqualTo("disappears");
  }

  @Test
  void theImpactNeedsTwoRevisionsThatExist() {
    get("/api/v1/impact?to=1").problem(400, "parameter-missing").about("from");
    get("/api/v1/impact?from=1&to=").problem(400, "parameter-missing").about("to");
    get("/api/v1/impact?from=one&to=1").problem(400, "revision-unreadable").about("from");
    get("/api/v1/impact?from=1&to=99").problem(404, "unknown-revision").about("to");
  }

  @Test
  void findingsTellCodeLevelAndRecord() {
    Answer answer = get("/api/v1/findings?rev=1").ok();
    assertThat(answer.at("/findings").valueStream().map(f -> f.get("level").asString()))
        .contains("warning", "note")
        .doesNotContain("error");
    assertThat(answer.at("/findings").toString())
        .contains("\"code\":\"no-baseline\"", "\"record\":\"beacon\"");
  }

  private static JsonNode feature(Answer answer, String key) {
    return answer
        .at("/features")
        .valueStream()
        .filter(f -> f.get("feature").asString().equals(key))
        .findFirst()
        .orElseThrow();
  }
}
