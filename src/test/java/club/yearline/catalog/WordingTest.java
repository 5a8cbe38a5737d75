package club.yearline.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Exchange;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureKind;
import club.yearline.effectivity.FeatureValue;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.ProductionRun;
import club.yearline.effectivity.Records;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.Series;
import club.yearline.effectivity.Variant;
import club.yearline.effectivity.Visibility;
import club.yearline.effectivity.YearMeaning;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.context.support.ResourceBundleMessageSource;

class WordingTest {

  private static final Feature LATCH =
      new Feature(
          "latch",
          "Latch",
          "52",
          FeatureKind.CHOICE,
          null,
          Visibility.CLOSE,
          Exchange.BOLT_ON,
          null,
          List.of(value("hook"), value("rotary"), value("key")),
          List.of());

  private final Wording wording = new Wording(messages());

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      nullValues = "-",
      value = {
        "1966 | 1966 | -    | -    | from 1966 on",
        "1971 | 1972 | -    | -    | old and new in 1971, all from 1972 on",
        "1971 | 1974 | -    | -    | first ones 1971, all from 1974 on",
        "1971 | -    | -    | -    | first ones 1971; when the last old one left is not known",
        "-    | 1974 | -    | -    | all from 1974 on; when the first one left is not known",
        "-    | -    | LT-9 | LT-9 | from serial LT-9 on",
        "-    | -    | LT-2 | LT-9 | first ones serial LT-2, all from serial LT-9 on",
        "-    | -    | LT-2 | -    | first ones serial LT-2; when the last old one left is not known",
        "-    | -    | -    | LT-9 | all from serial LT-9 on; when the first one left is not known",
        "1966 | 1966 | LT-9 | LT-9 | from 1966 (serial LT-9) on",
        "1966 | 1967 | -    | LT-9 | first ones 1966, all from 1967 (serial LT-9) on",
      })
  void tellsEveryFormOfCutIn(
      @Nullable Integer firstYear,
      @Nullable Integer settledYear,
      @Nullable String firstSerial,
      @Nullable String settledSerial,
      String expected) {
    CutIn cutIn = new CutIn("v", false, firstYear, settledYear, "lt", firstSerial, settledSerial);
    assertThat(wording.cutIn(cutIn)).isEqualTo(expected);
  }

  @Test
  void tellsACutInFromTheStart() {
    assertThat(wording.cutIn(CutIn.atStart("v"))).isEqualTo("from the first airframe");
  }

  @Test
  void namesStandardsBeforeOptionsWithTheirTakeRate() {
    List<Offered> offering =
        List.of(
            new Offered("key", Fit.OPTION, new BigDecimal("0.20")),
            new Offered("hook", Fit.STANDARD, null));
    assertThat(wording.offering(LATCH, offering))
        .isEqualTo("the hook; as an option the key (about 20\u00a0%)");
    assertThat(wording.offering(LATCH, offering.subList(0, 1)))
        .isEqualTo("as an option the key (about 20\u00a0%)");
  }

  @ParameterizedTest
  @CsvSource({"hp, '145.0\u00a0hp'", "count, 145.0", "deg, 145.0°"})
  void keepsANumberAsRecordedAndAddsItsUnit(String unit, String shown) {
    Feature power =
        new Feature(
            "power",
            "Power",
            "72",
            FeatureKind.NUMBER,
            unit,
            Visibility.PAPERS,
            Exchange.MAJOR_WORK,
            null,
            List.of(),
            List.of());
    assertThat(wording.value(power, "145.0")).isEqualTo(shown);
  }

  @Test
  void tellsAnswersOfEveryState() {
    Change hook = change("hook", CutIn.atStart("v"));
    assertThat(in(1960, hook)).isEqualTo("the hook");
    Change rotary = change("rotary", new CutIn("v", false, 1960, 1961, null, null, null));
    assertThat(in(1960, hook, rotary)).isEqualTo("the hook, or the rotary");
    assertThat(in(1960, rotary)).isEqualTo("nothing recorded, or the rotary");
    Change later = change("rotary", new CutIn("v", false, 1961, 1961, null, null, null));
    assertThat(in(1960, later)).isEqualTo("not recorded");
    Change bySerial = change("rotary", new CutIn("v", false, null, null, "lt", "LT-04", "LT-04"));
    assertThat(in(1960, hook, bySerial))
        .isEqualTo("LT-01 to LT-03: the hook; LT-04 to LT-09: the rotary");
  }

  @Test
  void countsAirframesInParts() {
    assertThat(wording.airframes(1)).isEqualTo("1 airframe");
    assertThat(wording.airframes(12.5)).isEqualTo("12.5 airframes");
    assertThat(wording.airframes(100)).isEqualTo("100 airframes");
  }

  private String in(int year, Change... changes) {
    Variant variant =
        new Variant(
            "v",
            "f",
            "V",
            null,
            null,
            List.of(),
            List.of(new ProductionRun(1960, 1961, null)),
            List.of(),
            List.of());
    List<Entry> entries = new ArrayList<>(List.of(changes));
    entries.add(new Family("f", "Maker", "F", null, YearMeaning.MODEL_YEAR, null, null, List.of()));
    entries.add(variant);
    entries.add(new Series("lt", "f", "LT-", 2, false, null, List.of()));
    entries.add(new SerialBlock("b", "lt", "LT-01", "LT-09", "v", 1960, false, List.of()));
    entries.add(LATCH);
    Catalogue catalogue = Catalogue.of(Records.of(entries, List.of()));
    List<Answer> answers = catalogue.expected(Position.of(variant, year));
    return wording.answer(answers.get(0));
  }

  private static Change change(String value, CutIn cutIn) {
    return new Change(
        value,
        "latch",
        value,
        null,
        List.of(new Offered(value, Fit.STANDARD, null)),
        List.of(cutIn),
        List.of());
  }

  private static FeatureValue value(String key) {
    return new FeatureValue(key, "the " + key, null, null, null);
  }

  private static ResourceBundleMessageSource messages() {
    ResourceBundleMessageSource source = new ResourceBundleMessageSource();
    source.setBasename("messages/wording");
    source.setDefaultEncoding("UTF-8");
    return source;
  }
}
