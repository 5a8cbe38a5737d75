package club.yearline.effectivity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sizes and neighbours of the blocks of a series (domain section 3). */
class SeriesBlocksTest {

  private static final Series SERIES = new Series("s", "f", null, null, false, null, List.of());

  @ParameterizedTest(name = "of {0}, block {1} holds {4} airframes from {2} up to {3}")
  @CsvSource({
    // One block, whole and in part.
    "1-10, 0, 1, 11, 10",
    "1-10, 0, 3, 5, 2",
    "1-10, 0, 0, 99, 10",
    "7-7, 0, 7, 8, 1",
    "1-10, 0, 11, 20, 0",
    // Two intermixed blocks share in equal parts, three in thirds.
    "1-10 1-10, 0, 1, 11, 5",
    "1-10 6-10, 0, 1, 11, 7.5",
    "1-10 6-10, 1, 1, 11, 2.5",
    "1-9 1-9 1-9, 2, 1, 10, 3",
    "1-10 6-15, 0, 8, 99, 1.5",
    // Letters at the end do not count, a letter at the beginning does.
    "1-10A, 0, 1, 99, 10",
    "1-10 10A-12, 0, 1, 99, 10",
    "1-10 10A-12, 1, 1, 99, 3",
    "10A-10B, 0, 1, 99, 1",
    "10A-12, 0, 11, 99, 2",
    // A lettered first that another block holds too is shared with it.
    "1-20 10A-12, 0, 1, 99, 19",
    "1-20 10A-12, 1, 1, 99, 1.5",
    "1-20 10A-12, 0, 10A, 99, 9",
    "1-20 10A-12, 0, 1, 10A, 10",
    "1-20 10A-12, 1, 10A, 99, 1.5",
    // An endless block ends for counting at the highest named, here 30.
    "21-, 0, 1, 99, 10",
    "21- 26-30, 0, 1, 99, 7.5",
  })
  void countsAirframesInEqualParts(
      String blocks, int wanted, String from, String to, double airframes) {
    SeriesBlocks all = blocks(blocks);
    String key = Integer.toString(wanted);
    assertThat(all.airframes(serial(from), serial(to), b -> b.entry().key().equals(key)))
        .isCloseTo(airframes, Offset.offset(1e-9));
  }

  @ParameterizedTest(name = "of {0}, {1} lies in {2}, above {3}, below {4}")
  @CsvSource({
    "1-10 21-30, 5, 0, , 1",
    "1-10 21-30, 1, 0, , 1",
    "1-10 21-30, 10, 0, , 1",
    "1-10 21-30, 10A, , 0, 1",
    "1-10 21-30, 11, , 0, 1",
    "1-10 21-30, 20Z, , 0, 1",
    "1-10 21-30, 21, 1, 0, ",
    "1-10 21-30, 0, , , 0",
    "1-10 21-30, 31, , 1, ",
    "1-30 11-12, 11, 01, , ",
    "1-30 11-12, 20, 0, 1, ",
    "1-12 5-8, 40, , 0, ",
    "1-10 21-, 999, 1, 0, ",
  })
  void namesTheBlocksThatHoldASerialAndItsNeighbours(
      String blocks, String serial, String holding, String below, String above) {
    SeriesBlocks all = blocks(blocks);
    Serial asked = serial(serial);
    StringBuilder keys = new StringBuilder();
    all.holding(asked).forEach(b -> keys.append(b.entry().key()));
    assertThat(keys.toString()).isEqualTo(holding == null ? "" : holding);
    assertThat(all.below(asked).map(b -> b.entry().key()).orElse(null)).isEqualTo(below);
    assertThat(all.above(asked).map(b -> b.entry().key()).orElse(null)).isEqualTo(above);
  }

  @Test
  void aSeriesWithoutBlocksHoldsNothing() {
    SeriesBlocks none = new SeriesBlocks(List.of());
    assertThat(none.holding(Serial.of(1))).isEmpty();
    assertThat(none.airframes(Serial.of(0), Serial.of(99), b -> true)).isZero();
  }

  /** Blocks such as {@code 1-10 21-}, keyed by their place. */
  private static SeriesBlocks blocks(String text) {
    List<String> parts = Arrays.asList(text.split(" "));
    return new SeriesBlocks(
        IntStream.range(0, parts.size()).mapToObj(i -> block("" + i, parts.get(i))).toList());
  }

  private static Block block(String key, String text) {
    String[] ends = text.split("-");
    SerialBlock entry =
        new SerialBlock(
            key, "s", ends[0], ends.length > 1 ? ends[1] : null, "v", 1960, true, List.of());
    return Block.of(entry, SERIES, 30);
  }

  private static Serial serial(String text) {
    return SERIES.read(text).orElseThrow();
  }
}
