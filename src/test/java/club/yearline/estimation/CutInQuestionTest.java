package club.yearline.estimation;

import static club.yearline.testing.Sample.block;
import static club.yearline.testing.Sample.change;
import static club.yearline.testing.Sample.choice;
import static club.yearline.testing.Sample.fromSerial;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.Retrofit;
import club.yearline.effectivity.Serial;
import club.yearline.effectivity.SerialBlock;
import club.yearline.effectivity.Series;
import club.yearline.testing.Sample;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What the records say about where to look for a cut-in; serials LT-0001 to LT-0500, by year. */
class CutInQuestionTest {

  private static final LocalDate DAY = LocalDate.of(2026, 5, 1);

  @Test
  void itIsLookedForBetweenTheRecordedSerials() {
    assertBounds(serials("LT-0210", "LT-0260"), 210, 260);
    assertBounds(serials("LT-0210", "LT-0210"), 210, 210);
  }

  @Test
  void aMissingSerialIsTheFirstOfTheRecordedYear() {
    assertBounds(new CutIn("la-2b", false, 1966, 1968, null, null, null), 201, 401);
    assertBounds(new CutIn("la-2b", false, 1966, 1968, "lt", null, "LT-0310"), 201, 310);
    assertBounds(new CutIn("la-2b", false, 1965, 1966, "lt", "LT-0150", null), 150, 201);
  }

  @Test
  void whereTheYearIsMissingTooItIsTheEndOfTheVariantsBlocks() {
    assertBounds(serials(null, "LT-0310"), 1, 310);
    assertBounds(serials("LT-0150", null), 150, 501);
    assertBounds(new CutIn("la-2b", false, null, 1967, null, null, null), 1, 301);
  }

  @Test
  void aYearWithoutABlockIsAsGoodAsNone() {
    assertBounds(new CutIn("la-2b", false, 1962, 1970, null, null, null), 1, 501);
  }

  @Test
  void aBlockWithoutEndReachesToTheHighestSerialThatAnyRecordNames() {
    SerialBlock endless =
        new SerialBlock("lt-1968", "lt", "LT-0401", null, "la-2b", 1968, false, List.of());
    CutIn cutIn = serials(null, "LT-0460");
    CutInQuestion question =
        question(
            cutIn,
            endless,
            change("latch-3", "door-latch", "sliding", fromSerial("la-2b", "lt", "LT-0480")));
    assertThat(question.lowest()).hasValue(1);
    CutInQuestion open = question(serials("LT-0460", null), endless);
    assertThat(open.highest()).hasValue(461);
  }

  @Test
  void aLetterIsNoPlaceOfItsOwn() {
    assertBounds(serials("LT-0210A", "LT-0260C"), 210, 260);
  }

  @Test
  void withoutABlockOrASerialThereIsNowhereToLook() {
    List<Entry> none =
        Sample.turnstone().stream().filter(e -> !(e instanceof SerialBlock)).toList();
    Change change = change("door-latch-rotary", "door-latch", "rotary", serials(null, "LT-0310"));
    Catalogue catalogue = Catalogue.of(Sample.records(Sample.with(none, change)));
    CutInQuestion question =
        CutInQuestion.of(catalogue, change, "la-2b", catalogue.series("lt").orElseThrow());
    assertThat(question.lowest()).isEqualTo(OptionalLong.empty());
    assertThat(question.highest()).hasValue(310);
  }

  @Test
  void theSeriesIsTheRecordedOneOrThoseOfTheVariantsBlocks() {
    Series other = Sample.series("ltx", "turnstone", "LTX-");
    SerialBlock further = block("ltx-1968", "ltx", "LTX-0001", "LTX-0009", "la-2b", 1968);
    Catalogue catalogue =
        Catalogue.of(Sample.records(Sample.with(Sample.turnstone(), other, further)));
    CutIn byYear = Sample.fromYear("la-2b", 1966);
    assertThat(CutInQuestion.series(catalogue, byYear))
        .extracting(Series::key)
        .containsExactly("lt", "ltx");
    assertThat(CutInQuestion.series(catalogue, fromSerial("la-2b", "ltx", "LTX-0004")))
        .extracting(Series::key)
        .containsExactly("ltx");
  }

  @Test
  void oldIsWhatWasOfferedBeforeAndNewWhatIsOfferedFromItOn() {
    CutInQuestion question =
        question(
            serials("LT-0310", "LT-0330"),
            choice("door-latch", "sliding", "hook", "rotary", "flush"),
            offering("door-latch-hook", fromSerial("la-2b", "lt", "LT-0150"), "hook", "rotary"),
            offering("door-latch-flush", fromSerial("la-2b", "lt", "LT-0450"), "flush"));
    assertThat(question.shows("sliding")).isEqualTo(Shows.OLD);
    assertThat(question.shows("hook")).isEqualTo(Shows.OLD);
    assertThat(question.shows("rotary")).isEqualTo(Shows.BOTH);
    assertThat(question.shows("flush")).isEqualTo(Shows.NEITHER);
    assertThat(question.shows("nonsense")).isEqualTo(Shows.NEITHER);
    assertThat(question(serials("LT-0310", null)).shows("rotary")).isEqualTo(Shows.NEW);
  }

  @Test
  void numbersAreEqualByValue() {
    CutIn cutIn = new CutIn("la-2b", false, 1966, 1966, null, null, null);
    Change more = change("power-160", "power", "160", cutIn);
    Catalogue catalogue =
        Catalogue.of(
            Sample.records(
                Sample.with(
                    Sample.turnstone(),
                    Sample.number("power", "hp"),
                    change("power-145", "power", "145.0", CutIn.atStart("la-2b")),
                    more)));
    CutInQuestion question =
        CutInQuestion.of(catalogue, more, "la-2b", catalogue.series("lt").orElseThrow());
    assertThat(question.shows("160.00")).isEqualTo(Shows.NEW);
    assertThat(question.shows("145")).isEqualTo(Shows.OLD);
    assertThat(question.shows("150")).isEqualTo(Shows.NEITHER);
  }

  @Test
  void aPartIsExchangedMoreReadilyWhereThereIsAKit() {
    Retrofit kit =
        new Retrofit(
            "kit",
            "door-latch",
            "rotary",
            "la-2b",
            1965,
            1966,
            "lt",
            "LT-0150",
            null,
            "Kit SK-1",
            null,
            List.of());
    CutInQuestion question = question(serials("LT-0310", "LT-0330"), kit);
    assertThat(question.exchange(Serial.of(149))).isEqualTo(0.05);
    assertThat(question.exchange(Serial.of(150))).isEqualTo(0.10);
    assertThat(question.exchange(Serial.of(300))).isEqualTo(0.10);
    // Built in 1967: the kit is not for that year.
    assertThat(question.exchange(Serial.of(301))).isEqualTo(0.05);
    // In no block: the year is not known, and does not exclude.
    assertThat(question.exchange(Serial.of(900))).isEqualTo(0.10);
  }

  @Test
  void aKitForAnotherValueDoesNotMatter() {
    Retrofit kit =
        new Retrofit(
            "kit",
            "door-latch",
            "sliding",
            "la-2b",
            null,
            null,
            null,
            null,
            null,
            "Kit SK-1",
            null,
            List.of());
    assertThat(question(serials("LT-0310", null), kit).exchange(Serial.of(200))).isEqualTo(0.05);
  }

  @Test
  void anAirframeCountsOnceByItsLatestObservation() {
    CutInQuestion question = question(serials("LT-0210", "LT-0260"));
    Gathered gathered =
        question.gather(
            List.of(
                seen("a", "lt", 200, Shows.NEW, DAY),
                seen("a", "lt", 200, Shows.OLD, DAY.plusDays(2)),
                seen("a", "lt", 200, Shows.NEW, DAY.plusDays(1)),
                seen("b", "lt", 300, Shows.OLD, DAY),
                seen("b", "lt", 300, Shows.NEW, DAY)));
    assertThat(gathered.counted())
        .extracting(Sighting::airframe, Sighting::isNew)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("a", false),
            org.assertj.core.groups.Tuple.tuple("b", true));
    assertThat(gathered.leftOut(LeftOut.SUPERSEDED)).isEqualTo(3);
    assertThat(gathered.countNew()).isEqualTo(1);
    assertThat(gathered.countOld()).isEqualTo(1);
  }

  @Test
  void whatTellsNothingIsLeftOutAndSaid() {
    CutInQuestion question = question(serials("LT-0210", "LT-0260"));
    Gathered gathered =
        question.gather(
            List.of(
                seen("a", "lt", 200, Shows.BOTH, DAY),
                seen("b", "lt", 201, Shows.NEITHER, DAY),
                seen("c", "ltx", 202, Shows.NEW, DAY),
                new Observed("d", null, null, Shows.NEW, DAY),
                seen("e", "lt", 203, Shows.OLD, DAY)));
    assertThat(gathered.counted()).extracting(Sighting::airframe).containsExactly("e");
    assertThat(Stream.of(LeftOut.values()).map(gathered::leftOut)).containsExactly(0, 1, 1, 1, 1);
  }

  @Test
  void aChangeThatDidNotCutInInAVariantCannotBeAskedAbout() {
    Catalogue catalogue = Catalogue.of(Sample.records(Sample.turnstone()));
    Change start = catalogue.change("door-latch-at-start").orElseThrow();
    Series series = catalogue.series("lt").orElseThrow();
    assertThatThrownBy(() -> CutInQuestion.of(catalogue, start, "la-2b", series))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> CutInQuestion.of(catalogue, start, "la-2", series))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static Observed seen(
      String airframe, String series, long ordinal, Shows shows, LocalDate on) {
    return new Observed(airframe, series, Serial.of(ordinal), shows, on);
  }

  private static Change offering(String key, CutIn cutIn, String... values) {
    return new Change(
        key,
        "door-latch",
        "Change " + key,
        null,
        Stream.of(values).map(v -> new Offered(v, Fit.STANDARD, null)).toList(),
        List.of(cutIn),
        List.of(Sample.citation(key + "-cited", "parts-book")));
  }

  private static CutIn serials(@Nullable String first, @Nullable String settled) {
    return new CutIn("la-2b", false, null, null, "lt", first, settled);
  }

  private static void assertBounds(CutIn cutIn, long lowest, long highest) {
    CutInQuestion question = question(cutIn);
    assertThat(question.lowest()).hasValue(lowest);
    assertThat(question.highest()).hasValue(highest);
  }

  private static CutInQuestion question(CutIn cutIn, Entry... others) {
    Change change = change("door-latch-rotary", "door-latch", "rotary", cutIn);
    List<Entry> entries = Sample.with(Sample.with(Sample.turnstone(), change), others);
    Catalogue catalogue = Catalogue.of(Sample.records(entries));
    return CutInQuestion.of(catalogue, change, "la-2b", catalogue.series("lt").orElseThrow());
  }
}
