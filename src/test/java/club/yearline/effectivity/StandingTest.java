package club.yearline.effectivity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How changes stand to positions, at each boundary of each form of cut-in (domain section 4). The
 * variant was built from 1960 to 1964: serials 1 to 10 in 1960, 11 to 20 in 1961, 21 to 30 in 1962,
 * 41 to 50 in 1963, and 51 to 60 in a year that nobody knows.
 */
class StandingTest {

  private static final Series SERIES = series("s");
  private static final Series OTHER = series("t");

  @ParameterizedTest(name = "{0} is {3} at year {1}, serial {2}")
  @CsvSource(
      nullValues = "-",
      value = {
        // At start.
        "start, 1960, -, AFTER",
        "start, -, 1, AFTER",
        // Clean, by year.
        "1962/1962, 1961, -, BEFORE",
        "1962/1962, 1962, -, AFTER",
        "1962/1962, 1961, 20, BEFORE",
        "1962/1962, 1962, 21, AFTER",
        "1962/1962, -, 55, OPEN",
        "1960/1960, -, 55, AFTER",
        "1965/1965, -, 55, BEFORE",
        // A window of years.
        "1961/1963, 1960, -, BEFORE",
        "1961/1963, 1961, -, INSIDE",
        "1961/1963, 1962, -, INSIDE",
        "1961/1963, 1963, -, AFTER",
        // One end by year.
        "1962/-, 1961, -, BEFORE",
        "1962/-, 1962, -, INSIDE",
        "1962/-, 1964, -, INSIDE",
        "-/1962, 1960, -, INSIDE",
        "-/1962, 1961, -, INSIDE",
        "-/1962, 1962, -, AFTER",
        // Clean, by serial; 15 is of 1961.
        "s15/s15, 1961, 14, BEFORE",
        "s15/s15, 1961, 14A, BEFORE",
        "s15/s15, 1961, 15, AFTER",
        "s15/s15, -, 14, BEFORE",
        "s15/s15, 1960, -, BEFORE",
        "s15/s15, 1961, -, OPEN",
        "s15/s15, 1962, -, AFTER",
        "s15/s15, 1960, t99, BEFORE",
        "s15/s15, 1961, t1, OPEN",
        "s15/s15, 1962, t1, AFTER",
        "s15/s15, -, t1, OPEN",
        // A lettered end.
        "s15A/s15A, 1961, 15, BEFORE",
        "s15A/s15A, 1961, 15A, AFTER",
        "s15A/s15A, 1961, 15B, AFTER",
        // A serial in a gap takes the year of the next block above, here 1963.
        "s35/s35, 1962, -, BEFORE",
        "s35/s35, 1963, -, OPEN",
        "s35/s35, 1964, -, AFTER",
        // A serial whose block has no year, and none with a year above.
        "s55/s55, 1960, -, OPEN",
        "s55/s55, 1964, -, OPEN",
        "s55/s55, 1964, 54, BEFORE",
        "s55/s55, 1964, 55, AFTER",
        "s55/s55, -, t1, OPEN",
        // A window of serials, over 1961 and 1962.
        "s15/s25, 1961, 14, BEFORE",
        "s15/s25, 1961, 15, INSIDE",
        "s15/s25, 1962, 24, INSIDE",
        "s15/s25, 1962, 25, AFTER",
        "s15/s25, 1960, -, BEFORE",
        "s15/s25, 1961, -, OPEN",
        "s15/s25, 1962, -, OPEN",
        "s15/s25, 1963, -, AFTER",
        "s5/s25, 1961, -, INSIDE",
        // One end by serial.
        "s15/-, 1961, 14, BEFORE",
        "s15/-, 1961, 15, INSIDE",
        "s15/-, 1962, -, INSIDE",
        "-/s15, 1961, 14, INSIDE",
        "-/s15, 1961, 15, AFTER",
        "-/s15, 1961, -, OPEN",
        // Both axes: the serial where there is one in the series, else the year.
        "1961s15/1962s25, 1961, 14, BEFORE",
        "1961s15/1962s25, 1961, 15, INSIDE",
        "1961s15/1962s25, 1961, -, INSIDE",
        "1961s15/1962s25, 1962, -, AFTER",
        "1961s15/1962s25, 1962, 24, INSIDE",
        "1961s15/1962s25, 1962, t1, AFTER",
        "1961s15/1962s25, -, t1, OPEN",
        // Each end by itself.
        "1961/s25, 1960, -, BEFORE",
        "1961/s25, 1961, -, INSIDE",
        "1961/s25, 1962, -, OPEN",
        "1961/s25, 1962, 24, INSIDE",
        "1961/s25, 1962, 25, AFTER",
        "s15/1962, 1961, -, OPEN",
        "s15/1962, 1962, -, AFTER",
        // Below an undecided settled end, but certainly below the first.
        "1964/s55, 1963, -, BEFORE",
      })
  void standsByEachEnd(
      String window, @Nullable Integer year, @Nullable String serial, Standing standing) {
    assertThat(standings(year, serial, window)).containsExactly(standing);
  }

  @ParameterizedTest(name = "{0} then {1} at {2}: {3}, {4}")
  @CsvSource({
    "1962/1962, -/1963, 1961, BEFORE, BEFORE",
    "1962/1962, -/1963, 1962, AFTER, INSIDE",
    "1962/1962, -/1963, 1963, AFTER, AFTER",
    "1961/1963, -/1964, 1960, BEFORE, BEFORE",
    "1961/1963, -/1964, 1961, INSIDE, INSIDE",
    "1962/1962, -/s45, 1961, BEFORE, BEFORE",
    "1962/1962, -/s45, 1963, AFTER, OPEN",
    "1964/1964, -/s55, 1963, BEFORE, BEFORE",
    "s25/s25, -/1963, 1962, OPEN, INSIDE",
    "-/1961, -/1963, 1960, INSIDE, INSIDE",
  })
  void aChangeWithoutFirstWaitsForTheOneBefore(
      String one, String other, int year, Standing ofOne, Standing ofOther) {
    assertThat(standings(year, null, one, other)).containsExactly(ofOne, ofOther);
  }

  @Test
  void waitingPassesAlongAChainOfChangesWithoutFirst() {
    assertThat(standings(1960, null, "1962/1962", "-/1963", "-/1964"))
        .containsExactly(Standing.BEFORE, Standing.BEFORE, Standing.BEFORE);
    assertThat(standings(1962, null, "1962/1962", "-/1963", "-/1964"))
        .containsExactly(Standing.AFTER, Standing.INSIDE, Standing.INSIDE);
  }

  @ParameterizedTest(name = "{0} comes before {1}")
  @CsvSource({
    // At start before all else.
    "start, 1950/1950",
    "start, -/1950",
    // By the settled year, whatever the first.
    "1963/1963, 1960/1964",
    "-/1962, 1961/1963",
    // Else by the year of the settled serial, before the first year.
    "1962/s15, 1962/1962",
    "-/s15, 1962/-",
    // Else by the first year, else the year of the first serial, else last.
    "1961/-, 1962/1962",
    "s15/-, 1962/1962",
    "1964/1964, s55/s55",
    "s35/s35, 1964/1964",
    "1962/1962, s35/s35",
    // Within a year, those without serials first.
    "1961/1961, s11/s11",
    "1961/1961, 1961s11/-",
    "1950/1961, s11/s11",
    // Then by series key, then by settled serial, the first where it is missing.
    "s15/s15, 1961t1/1961t1",
    "s11/s15, s15/s16",
    "s15/-, s12/s16",
    "s14/s15, s16/-",
    "s11/s15, s12/s15A",
    // Then by first year, missing before all, then by first serial, missing before all.
    "-/s15, 1961/s15",
    "1960/1962, 1961/1962",
    "-/1962, 1960/1962",
    "-/s15, s1/s15",
    "s1/s15, s2/s15",
  })
  void comeInOneOrderHoweverTheyAreRecorded(String earlier, String later) {
    assertThat(order(earlier, later)).containsExactly("c0", "c1");
    assertThat(order(later, earlier)).containsExactly("c1", "c0");
  }

  @Test
  void equalPlacesAreOrderedByKey() {
    assertThat(order("1962/1962", "1962/1962")).containsExactly("c0", "c1");
    assertThat(order("start", "start")).containsExactly("c0", "c1");
  }

  private static List<String> order(String... windows) {
    return timeline(windows).changes().stream().map(Change::key).toList();
  }

  private static List<Standing> standings(
      @Nullable Integer year, @Nullable String serial, String... windows) {
    Position position = position(year, serial);
    List<Standing> standings = new ArrayList<>();
    Standing previous = null;
    for (Step step : timeline(windows).steps()) {
      previous = step.standing(position, previous, new int[] {1960, 1961, 1962, 1963, 1964});
      standings.add(previous);
    }
    return standings;
  }

  private static Position position(@Nullable Integer year, @Nullable String serial) {
    Variant variant = variant();
    if (serial == null) {
      return Position.of(variant, year);
    }
    Series series = serial.startsWith("t") ? OTHER : SERIES;
    String text = series == SERIES ? "s" + serial : serial;
    return Position.of(variant, year, series, series.read(text).orElseThrow());
  }

  private static Timeline timeline(String... windows) {
    List<Entry> entries = new ArrayList<>(List.of(SERIES, OTHER, variant()));
    entries.add(
        new Family("f", "Lindmark Aero", "F", null, YearMeaning.MODEL_YEAR, null, null, List.of()));
    entries.add(
        new Feature(
            "x",
            "X",
            "52",
            FeatureKind.NUMBER,
            "lb",
            Visibility.RAMP,
            Exchange.BOLT_ON,
            null,
            List.of(),
            List.of()));
    entries.addAll(blocks());
    for (int i = 0; i < windows.length; i++) {
      entries.add(change("c" + i, windows[i]));
    }
    return Catalogue.of(Records.of(entries, List.of()))
        .model("v")
        .orElseThrow()
        .timeline("x")
        .orElseThrow();
  }

  private static List<SerialBlock> blocks() {
    return List.of(
        block("s1", "s10", 1960),
        block("s11", "s20", 1961),
        block("s21", "s30", 1962),
        block("s41", "s50", 1963),
        block("s51", "s60", null));
  }

  private static SerialBlock block(String first, String last, @Nullable Integer year) {
    return new SerialBlock(first, "s", first, last, "v", year, false, List.of());
  }

  private static Variant variant() {
    return new Variant(
        "v",
        "f",
        "V",
        null,
        null,
        List.of(),
        List.of(new ProductionRun(1960, 1964, null)),
        List.of(),
        List.of());
  }

  private static Series series(String key) {
    return new Series(key, "f", key, null, false, null, List.of());
  }

  /** A change with a window such as {@code 1961s15/-}: first and settled, year and serial. */
  private static Change change(String key, String window) {
    String[] ends = window.split("/");
    CutIn cutIn =
        window.equals("start")
            ? CutIn.atStart("v")
            : new CutIn(
                "v",
                false,
                year(ends[0]),
                year(ends[1]),
                window.contains("t") ? "t" : window.contains("s") ? "s" : null,
                serial(ends[0]),
                serial(ends[1]));
    return new Change(
        key,
        "x",
        key,
        null,
        List.of(new Offered("1", Fit.STANDARD, null)),
        List.of(cutIn),
        List.of());
  }

  private static @Nullable Integer year(String end) {
    String digits = end.split("[st]", 2)[0];
    return digits.isEmpty() || digits.equals("-") ? null : Integer.valueOf(digits);
  }

  private static @Nullable String serial(String end) {
    int at = Arrays.stream(new int[] {end.indexOf('s'), end.indexOf('t')}).max().orElseThrow();
    return at < 0 ? null : end.substring(at);
  }
}
