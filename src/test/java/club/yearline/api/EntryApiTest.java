package club.yearline.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** The entries of the catalogue: one call for each kind. */
class EntryApiTest extends ApiCalls {

  @Test
  void allFamiliesAreListedWithTheirVariants() {
    Answer answer = get("/api/v1/families").ok();
    assertThat(answer.at("/revision").asInt()).isEqualTo(NEWEST);
    assertThat(answer.at("/families").valueStream().map(f -> f.get("key").asString()))
        .containsExactly("dotterel", "turnstone", "whimbrel");
    assertThat(answer.at("/families/1/name").asString()).isEqualTo("LA-2 Turnstone");
    assertThat(texts(answer.at("/families/1/variants")))
        .containsExactly("la-2", "la-2a", "la-2b", "la-2c", "la-2d", "la-2d-amphibian");
  }

  @Test
  void aFamilyTellsItsMakerItsYearsAndItsSeries() {
    Answer answer = get("/api/v1/families/turnstone").ok();
    assertThat(answer.json().propertyNames())
        .contains("revision", "key", "maker", "name", "yearMeans", "variants", "series");
    assertThat(answer.at("/maker").asString()).isEqualTo("Lindmark Aero");
    assertThat(answer.at("/yearMeans").asString()).isEqualTo("model-year");
    assertThat(answer.at("/series").valueStream().map(s -> s.get("prefix").asString()))
        .contains("LT-");
  }

  @Test
  void aVariantTellsItsNamesItsProductionAndItsBlocks() {
    Answer answer = get("/api/v1/variants/la-2a?rev=2").ok();
    assertThat(answer.at("/designation").asString()).isEqualTo("LA-2A");
    assertThat(answer.at("/family").asString()).isEqualTo("turnstone");
    assertThat(answer.at("/runs").toString())
        .isEqualTo(
            "[{\"firstYear\":1958,\"lastYear\":1958},{\"firstYear\":1960,\"lastYear\":1960}]");
    assertThat(answer.at("/lineage/0").toString())
        .isEqualTo(
            "{\"from\":\"la-2\",\"to\":\"la-2a\",\"relation\":\"developed-into\","
                + "\"note\":\"A new fin.\"}");
    assertThat(answer.at("/blocks").valueStream().map(b -> b.get("first").asString()))
        .containsExactly("LT-0021", "LT-0041");
    assertThat(answer.at("/blocks/0/intermixed").isBoolean()).isTrue();
  }

  @Test
  void aFeatureTellsItsValuesAndTheChangesToIt() {
    Answer answer = get("/api/v1/features/door-latch?rev=2").ok();
    assertThat(answer.at("/kind").asString()).isEqualTo("choice");
    assertThat(answer.at("/visibility").asString()).isEqualTo("close");
    assertThat(answer.at("/exchange").asString()).isEqualTo("bolt-on");
    assertThat(answer.at("/values/1").toString())
        .isEqualTo(
            "{\"key\":\"rotary\",\"label\":\"rotary latch\",\"cue\":\"A round knob.\","
                + "\"picture\":\"latch.svg\",\"pictureCredit\":\"Club\"}");
    assertThat(texts(answer.at("/changes")))
        .containsExactly("latch-a", "latch-rotary", "latch-start");
  }

  @Test
  void aFigureHasAUnitAndNumbersForValues() {
    assertThat(get("/api/v1/features/power?rev=2").ok().at("/unit").asString()).isEqualTo("hp");
    JsonNode value = get("/api/v1/changes/power-5?rev=2").ok().at("/offering/0/value");
    assertThat(value.isNumber()).isTrue();
    assertThat(value.decimalValue()).isEqualByComparingTo("108.5");
  }

  @Test
  void aChangeTellsWhatItOffersAndWhereItCutIn() {
    Answer answer = get("/api/v1/changes/latch-rotary?rev=2").ok();
    assertThat(answer.at("/feature").asString()).isEqualTo("door-latch");
    assertThat(answer.at("/offering/0").toString())
        .isEqualTo("{\"value\":\"rotary\",\"label\":\"rotary latch\",\"fit\":\"standard\"}");
    assertThat(answer.at("/cutIns/0").toString())
        .isEqualTo(
            "{\"variant\":\"la-2\",\"atStart\":false,\"window\":{\"firstYear\":null,"
                + "\"settledYear\":null,\"series\":\"lt\",\"firstSerial\":\"LT-0015\","
                + "\"settledSerial\":\"LT-0015\"}}");
    Answer atStart = get("/api/v1/changes/latch-start?rev=2").ok();
    assertThat(atStart.at("/cutIns/0").toString())
        .isEqualTo("{\"variant\":\"la-2\",\"atStart\":true}");
  }

  @Test
  void aSourceTellsItsGradeAndWhatCitesIt() {
    Answer answer = get("/api/v1/sources/book?rev=2").ok();
    assertThat(answer.at("/kind").asString()).isEqualTo("book");
    assertThat(answer.at("/grade").asString()).isEqualTo("published");
    assertThat(answer.at("/citedBy").toString())
        .isEqualTo(
            "[{\"kind\":\"change\",\"record\":\"light-nose\",\"source\":\"book\","
                + "\"locator\":\"p. 12\",\"stance\":\"disputes\"}]");
  }

  @ParameterizedTest
  @CsvSource({
    "families, unknown-family",
    "variants, unknown-variant",
    "features, unknown-feature",
    "changes, unknown-change",
    "sources, unknown-source",
  })
  void anUnknownKeyIsRepeatedInTheRefusal(String kind, String problem) {
    Answer answer = get("/api/v1/" + kind + "/no-such-key").problem(404, problem);
    assertThat(answer.at("/detail").asString()).contains("“no-such-key”");
  }

  @ParameterizedTest
  @ValueSource(strings = {"families/turnstone", "variants/la-2b", "sources/parts-book-7"})
  void aKeyOfTheDemoIsUnknownWhereTheCatalogueWasAnother(String entry) {
    get("/api/v1/" + entry + "?rev=1").ok();
    assertThat(get("/api/v1/" + entry + "?rev=3").status()).isEqualTo(404);
  }

  @Test
  void whatWasTypedComesBackAsTextOfAProblemThatNoBrowserRuns() {
    Answer answer =
        get("/api/v1/variants/%3Cscript%3Ealert(1)%3Cscript%3E").problem(404, "unknown-variant");
    assertThat(answer.at("/detail").asString()).contains("<script>alert(1)");
    assertThat(answer.header("X-Content-Type-Options")).isEqualTo("nosniff");
    assertThat(answer.header("Content-Security-Policy")).contains("default-src 'self'");
  }

  @Test
  void anEndlessKeyIsNotRepeatedInFull() {
    Answer answer = get("/api/v1/variants/" + "x".repeat(5000)).problem(404, "unknown-variant");
    assertThat(answer.text()).hasSizeLessThan(1000).contains("xxx…");
  }

  private static List<String> texts(JsonNode list) {
    return list.valueStream().map(JsonNode::asString).toList();
  }
}
