package club.yearline.effectivity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Reading, order and display of serials (domain section 3). */
class SerialReadingTest {

  @ParameterizedTest(name = "''{1}'' in a series with prefix ''{0}'' is {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "TS-   | TS-0042           | 42",
        "TS-   | ts 42             | 42",
        "TS-   | TS42              | 42",
        "TS-   | \"  ts-42  \"     | 42",
        "TS-   | T S - 4 2         | 42",
        "TS-   | ts.0.0.4/2        | 42",
        "TS    | TS-42             | 42",
        "ts-   | TS42              | 42",
        "TS-   | TS-42a            | 42A",
        "TS-   | TS-42 Z           | 42Z",
        "TS-   | TS-42-B           | 42B",
        "TS-   | TS0               | 0",
        "TS-   | TS000A            | 0A",
        "TS-   | TS1 234           | 1234",
        "\"\"  | 0042              | 42",
        "\"\"  | 42A               | 42A",
        "\"\"  | 12-34             | 1234",
        "28-   | 28-17             | 17",
        "28-   | 2817              | 17",
        "28-   | 28-28             | 28",
        "28R-7 | 28R-7001          | 1",
        "28R-7 | 28 r 7 1          | 1",
        "A-B-  | AB9               | 9",
        "A-B-  | a.b/9             | 9",
        "TS-   | TS999999999999999999         | 999999999999999999",
        "TS-   | TS00000000999999999999999999 | 999999999999999999",
      })
  void readsWhatBelongsToTheSeries(String prefix, String text, String serial) {
    assertThat(series(prefix, null, false).read(text)).map(Serial::toString).contains(serial);
  }

  @ParameterizedTest(name = "''{1}'' is no serial of a series with prefix ''{0}''")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "TS-  | \"\"",
        "TS-  | TS-",
        "TS-  | TS-A",
        "TS-  | T-42",
        "TS-  | 42",
        "TS-  | LT-42",
        "TS-  | TS-42AB",
        "TS-  | TS-4A2",
        "TS-  | TS-A42",
        "TS-  | TS_42",
        "TS-  | TS-4,2",
        "TS-  | TS-+42",
        "TS-  | TS-42Ä",
        "TS-  | TS-٤٢",
        "TS-  | TS1000000000000000000",
        "\"\" | -",
        "\"\" | A",
        "28-  | 28",
        "28-  | 2-8",
      })
  void refusesWhatDoesNot(String prefix, String text) {
    assertThat(series(prefix, null, false).read(text)).isEmpty();
  }

  static Stream<String> dashes() {
    return IntStream.rangeClosed(0, 0xFFFF)
        .filter(
            c ->
                Character.getType(c) == Character.DASH_PUNCTUATION
                    || "\u2053\u207B\u208B\u2212".indexOf(c) >= 0)
        .mapToObj(Character::toString);
  }

  /** Which characters have the property Dash beside dash punctuation is from memory. */
  @ParameterizedTest
  @MethodSource("dashes")
  void readsEveryUnicodeDashAsADash(String dash) {
    assertThat(series("TS-", null, false).read("TS" + dash + "42")).contains(Serial.of(42));
    assertThat(series("TS" + dash, null, true).read("ts-42" + dash + "65")).contains(Serial.of(42));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\u00A0", "\t", "\u2009", "\u3000", "  "})
  void dropsEveryKindOfSpace(String space) {
    assertThat(series("TS-", null, false).read(space + "TS" + space + "42" + space))
        .contains(Serial.of(42));
  }

  @ParameterizedTest(name = "with a year suffix, ''{1}'' after prefix ''{0}'' is {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "\"\" | 1355-95    | 1355",
        "\"\" | 1355       | 1355",
        "\"\" | 1355-1995  | 1355",
        "\"\" | 1355/95    | 1355",
        "\"\" | 1355.95    | 1355",
        "\"\" | 1355A-95   | 1355A",
        "\"\" | 1355--95   | 1355",
        "\"\" | 1355-1903  | 1355",
        "\"\" | 1355-2200  | 1355",
        "\"\" | 1355-1902  | 13551902",
        "\"\" | 1355-2201  | 13552201",
        "\"\" | 1355-095   | 1355095",
        "\"\" | 1355-9     | 13559",
        "\"\" | 1355-95A   | 135595A",
        "\"\" | 13-55-95   | 1355",
        "\"\" | -95        | 95",
        "LT-  | LT-95      | 95",
        "LT-  | LT-1995    | 1995",
        "LT-  | LT-95-95   | 95",
        "LT-  | LT 95      | 95",
        "28-  | 28-95      | 95",
        "28-  | 28-7-95    | 7",
      })
  void readsAYearAtTheEndThatDoesNotCount(String prefix, String text, String serial) {
    assertThat(series(prefix, null, true).read(text)).map(Serial::toString).contains(serial);
  }

  @Test
  void readsNoYearWhereTheSeriesHasNone() {
    assertThat(series("", null, false).read("1355-95")).contains(Serial.of(135595));
  }

  @Test
  void readsFortyCharactersAndRefusesMore() {
    Series series = series("TS-", null, false);
    assertThat(series.read("TS-" + "0".repeat(36) + "7")).contains(Serial.of(7));
    assertThat(series.read("  TS-" + "0".repeat(36) + "7  ")).contains(Serial.of(7));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> series.read("TS-" + "0".repeat(37) + "7"))
        .withMessageContaining("40")
        .withMessageContaining("41");
  }

  @Test
  void ordersByOrdinalThenNoLetterBeforeLetters() {
    List<Serial> inOrder =
        List.of(
            Serial.of(9),
            Serial.of(42),
            new Serial(42, 'A'),
            new Serial(42, 'B'),
            new Serial(42, 'Z'),
            Serial.of(43),
            Serial.of(100));
    assertThat(inOrder).isSorted();
    for (int i = 1; i < inOrder.size(); i++) {
      assertThat(inOrder.get(i - 1).isBelow(inOrder.get(i))).isTrue();
      assertThat(inOrder.get(i).isBelow(inOrder.get(i - 1))).isFalse();
      assertThat(inOrder.get(i).isBelow(inOrder.get(i))).isFalse();
    }
  }

  @ParameterizedTest(name = "{2} with prefix ''{0}'' and {1} digits is shown as {3}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "TS-  | 4 | 42     | TS-0042",
        "TS-  | 4 | 42B    | TS-0042B",
        "TS-  | 4 | 123456 | TS-123456",
        "TS-  |   | 42     | TS-42",
        "\"\" | 3 | 0      | 000",
        "     | 1 | 7A     | 7A",
        "28-  | 5 | 17     | 28-00017",
      })
  void showsPrefixOrdinalAndSuffix(String prefix, Integer digits, String serial, String shown) {
    Series series = series(prefix, digits, false);
    Serial read = series("", null, false).read(serial).orElseThrow();
    assertThat(series.show(read)).isEqualTo(shown);
    assertThat(series.read(shown)).contains(read);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "TS-", "28-", "1995-", "A-B-", "12", "7."})
  void readsBackWhatItShows(String prefix) {
    for (boolean yearSuffix : new boolean[] {false, true}) {
      Series series = series(prefix, 3, yearSuffix);
      for (long ordinal : new long[] {0, 1, 65, 95, 999, 1965, 2001, Serial.MAX_ORDINAL}) {
        for (char suffix : new char[] {Serial.NO_SUFFIX, 'A', 'Z'}) {
          Serial serial = new Serial(ordinal, suffix);
          assertThat(series.read(series.show(serial))).contains(serial);
        }
      }
    }
  }

  @ParameterizedTest(name = "{0}: next {1}, last named before {2}, plain from {3}")
  @CsvSource({
    "412, 412A, 411, 412",
    "412A, 412B, 412, 413",
    "412B, 412C, 412A, 413",
    "412Z, 413, 412Y, 413",
  })
  void knowsItsNeighbours(String serial, String next, String before, long plain) {
    Series bare = series("", null, false);
    Serial read = bare.read(serial).orElseThrow();
    assertThat(read.next().toString()).isEqualTo(next);
    assertThat(read.lastNamedBefore().toString()).isEqualTo(before);
    assertThat(read.plainFloor()).isEqualTo(plain);
  }

  private static Series series(String prefix, Integer digits, boolean yearSuffix) {
    return new Series("s", "f", prefix, digits, yearSuffix, null, List.of());
  }
}
