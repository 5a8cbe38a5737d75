package club.yearline.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.SerialBlock;
import club.yearline.estimation.Bounds;
import club.yearline.testing.Sample;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** In which ten serials an airframe stands whose owner keeps its serial. */
class BandsTest {

  @Test
  void aBandHoldsTenSerialsOfTheVariant() {
    Bands bands = bands(block("a", 1, 100L, "la-2b"));
    assertThat(bands.around(1)).isEqualTo(new Bounds(1, 10));
    assertThat(bands.around(10)).isEqualTo(new Bounds(1, 10));
    assertThat(bands.around(11)).isEqualTo(new Bounds(11, 20));
    assertThat(bands.around(100)).isEqualTo(new Bounds(91, 100));
  }

  @Test
  void aLoneSerialSharesItsBandWithTheNearest() {
    Bands bands =
        bands(
            block("a", 231, 231L, "la-2b"),
            block("b", 244, 289L, "la-2b"),
            block("c", 232, 243L, "la-2a"));
    assertThat(bands.around(231)).isEqualTo(new Bounds(231, 252));
    assertThat(bands.around(250)).isEqualTo(new Bounds(231, 252));
  }

  @Test
  void whatIsLeftOverBelongsToTheLastBand() {
    Bands bands = bands(block("a", 1, 25L, "la-2b"));
    assertThat(bands.around(12)).isEqualTo(new Bounds(11, 25));
    assertThat(bands.around(25)).isEqualTo(new Bounds(11, 25));
    assertThat(bands(block("a", 1, 6L, "la-2b")).around(2)).isEqualTo(new Bounds(1, 6));
  }

  @Test
  void intermixedBlocksCountOnce() {
    Bands bands = bands(block("a", 1, 20L, "la-2b"), block("b", 11, 40L, "la-2b"));
    assertThat(bands.around(15)).isEqualTo(new Bounds(11, 20));
    assertThat(bands.around(38)).isEqualTo(new Bounds(31, 40));
  }

  @Test
  void aSerialInNoBlockIsReachedByTheBandBesideIt() {
    Bands bands = bands(block("a", 1, 40L, "la-2b"));
    assertThat(bands.around(57)).isEqualTo(new Bounds(31, 59));
    assertThat(bands.around(52)).isEqualTo(new Bounds(31, 59));
  }

  @Test
  void withoutBlocksNothingIsTold() {
    assertThat(bands().around(57)).isEqualTo(new Bounds(0, 999_999_999_999_999_999L));
  }

  @Test
  void aBlockWithoutEndReachesAsFarAsAnyRecord() {
    Bands bands = bands(block("a", 1, null, "la-2b"), block("b", 61, 80L, "la-2a"));
    assertThat(bands.around(75)).isEqualTo(new Bounds(71, 80));
  }

  private static SerialBlock block(String key, long first, @Nullable Long last, String variant) {
    return new SerialBlock(
        key,
        "lt",
        "LT-" + first,
        last == null ? null : "LT-" + last,
        variant,
        1966,
        true,
        List.of());
  }

  private static Bands bands(SerialBlock... blocks) {
    List<Entry> entries =
        Stream.concat(
                Sample.turnstone().stream().filter(e -> !(e instanceof SerialBlock)),
                Stream.concat(
                    Stream.of(Sample.variant("la-2a", "turnstone", 1964, 1968)), Stream.of(blocks)))
            .toList();
    Catalogue catalogue = Catalogue.of(Sample.records(entries));
    return Bands.of(catalogue.model("la-2b").orElseThrow(), catalogue.series("lt").orElseThrow());
  }
}
