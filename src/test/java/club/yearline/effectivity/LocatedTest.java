package club.yearline.effectivity;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.testing.SmallCatalogue;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where questions point to (domain sections 3 and 5). */
class LocatedTest {

  private static final Catalogue SMALL = Catalogue.of(SmallCatalogue.records());

  @ParameterizedTest(name = "variant {0}, year {1}, serial {2}: {3} {4} {5}")
  @CsvSource({
    "la-2, 1956, ,         la-2, 1956, ",
    "la-2, 1957, ,         la-2, 1957, ",
    "la-2a, 1960, ,        la-2a, 1960, ",
    ", , lt 1,             la-2, 1956, LT-0001",
    ", , LT-0010,          la-2, 1956, LT-0010",
    ", , LT-0010A,         , , ",
    ", , LT-0011,          la-2, 1957, LT-0011",
    "la-2, , LT-0011,      la-2, 1957, LT-0011",
    "la-2, 1957, LT-0011,  la-2, 1957, LT-0011",
    ", 1957, LT-0011,      la-2, 1957, LT-0011",
    ", , 30,               la-5, 1961, 30",
    ", , 31,               la-5, , 31",
    ", 1962, 31,           la-5, 1962, 31",
    "la-5, 1961, 31,       la-5, 1961, 31",
  })
  void findsTheOnePosition(
      @Nullable String variant,
      @Nullable Integer year,
      @Nullable String serial,
      @Nullable String foundVariant,
      @Nullable Integer foundYear,
      @Nullable String foundSerial) {
    Located located = ask(SMALL, variant, year, serial);
    if (foundVariant == null) {
      assertThat(located).isInstanceOf(Located.NoBlock.class);
      return;
    }
    assertThat(located)
        .isInstanceOfSatisfying(
            Located.Found.class,
            found -> {
              assertThat(found.position().variant().key()).isEqualTo(foundVariant);
              assertThat(found.position().year()).isEqualTo(foundYear);
              assertThat(found.position().serialText()).isEqualTo(foundSerial);
              assertThat(found.block() == null).isEqualTo(serial == null);
              assertThat(found.outsideBlocks()).isFalse();
            });
  }

  @Test
  void asksForMoreWhereTooLittleIsGiven() {
    assertThat(ask(SMALL, null, null, null)).isEqualTo(new Located.Incomplete());
    assertThat(ask(SMALL, "la-2", null, null)).isEqualTo(new Located.Incomplete());
    assertThat(ask(SMALL, null, 1956, null)).isEqualTo(new Located.Incomplete());
  }

  @Test
  void namesAVariantThatDoesNotExist() {
    assertThat(ask(SMALL, "la-9", 1956, null)).isEqualTo(new Located.UnknownVariant("la-9"));
  }

  @Test
  void refusesATextThatIsTooLong() {
    assertThat(ask(SMALL, null, null, "LT-" + "1".repeat(38))).isEqualTo(new Located.TooLong(41));
    assertThat(ask(SMALL, null, null, "LT-" + "1".repeat(37))).isInstanceOf(Located.NoSeries.class);
  }

  @Test
  void saysWhereATextIsNoSerial() {
    assertThat(ask(SMALL, null, null, "XX-1")).isEqualTo(new Located.NoSeries("XX-1", null));
    assertThat(ask(SMALL, "la-2", null, "XX-1"))
        .isEqualTo(new Located.NoSeries("XX-1", variant("la-2")));
  }

  @Test
  void namesTheRunsForAYearOutsideProduction() {
    assertThat(ask(SMALL, "la-2a", 1959, null))
        .isEqualTo(
            new Located.OutsideProduction(
                variant("la-2a"),
                1959,
                List.of(new ProductionRun(1958, 1958, null), new ProductionRun(1960, 1960, null))));
    assertThat(ask(SMALL, "la-2", 1955, null)).isInstanceOf(Located.OutsideProduction.class);
    assertThat(ask(SMALL, "la-2", 1958, null)).isInstanceOf(Located.OutsideProduction.class);
  }

  @Test
  void namesTheRunsForAYearlessBlockAskedOutsideProduction() {
    assertThat(ask(SMALL, "la-5", 1963, "31")).isInstanceOf(Located.OutsideProduction.class);
  }

  @Test
  void namesTheNearestBlocksOfASerialInNone() {
    Located located = ask(SMALL, null, null, "LT-0035");
    assertThat(located)
        .isInstanceOfSatisfying(
            Located.NoBlock.class,
            gap -> {
              assertThat(gap.matches()).hasSize(1);
              assertThat(gap.matches().get(0).below().lastSerial()).isEqualTo("LT-0030");
              assertThat(gap.matches().get(0).above().firstSerial()).isEqualTo("LT-0041");
            });
    assertThat(ask(SMALL, "la-2", null, "LT-0035")).isInstanceOf(Located.NoBlock.class);
    assertThat(ask(SMALL, null, 1956, "LT-0035")).isInstanceOf(Located.NoBlock.class);
  }

  @Test
  void answersASerialInNoBlockByTheYearThatIsGiven() {
    assertThat(ask(SMALL, "la-2a", 1960, "LT-0035"))
        .isInstanceOfSatisfying(
            Located.Found.class,
            found -> {
              assertThat(found.outsideBlocks()).isTrue();
              assertThat(found.position().year()).isEqualTo(1960);
              assertThat(found.position().serialText()).isEqualTo("LT-0035");
            });
    assertThat(ask(SMALL, "la-2a", 1959, "LT-0035")).isInstanceOf(Located.OutsideProduction.class);
  }

  @Test
  void namesTheBlockThatSaysAnotherYearOrVariant() {
    assertThat(blocksOf(ask(SMALL, "la-2", 1956, "LT-0011"))).containsExactly("lt-LT-0011");
    assertThat(blocksOf(ask(SMALL, null, 1956, "LT-0011"))).containsExactly("lt-LT-0011");
    assertThat(blocksOf(ask(SMALL, "la-2a", null, "LT-0011"))).containsExactly("lt-LT-0011");
    assertThat(blocksOf(ask(SMALL, "la-2a", 1957, "LT-0011"))).containsExactly("lt-LT-0011");
  }

  @Test
  void namesTheBlockOfAnotherVariantAlsoInASeriesTheAskedOneDoesNotUse() {
    assertThat(blocksOf(ask(SMALL, "la-5", null, "LT-0011"))).containsExactly("lt-LT-0011");
    assertThat(ask(SMALL, "la-5", null, "LT-0035")).isInstanceOf(Located.NoSeries.class);
  }

  @Test
  void answersASerialOfABlockWhateverTheRunsSay() {
    Catalogue with = with(block("late", "lt", "LT-0070", "LT-0070", "la-2a", 1965, false));
    assertThat(ask(with, null, null, "LT-0070")).isInstanceOf(Located.Found.class);
    assertThat(ask(with, "la-2a", 1965, "LT-0070")).isInstanceOf(Located.Found.class);
    assertThat(ask(with, "la-2a", 1965, null)).isInstanceOf(Located.OutsideProduction.class);
  }

  @Test
  void listsEachVariantOfIntermixedBlocks() {
    Catalogue with =
        with(
            block("a", "lt", "LT-0100", "LT-0109", "la-2", 1957, true),
            block("b", "lt", "LT-0105", "LT-0114", "la-2a", 1958, true),
            block("c", "lt", "LT-0105", "LT-0106", "la-2a", 1958, true));
    assertThat(candidates(ask(with, null, null, "LT-0105")))
        .containsExactlyInAnyOrder("la-2 1957", "la-2a 1958");
    assertThat(ask(with, null, null, "LT-0104")).isInstanceOf(Located.Found.class);
    assertThat(ask(with, null, null, "LT-0110")).isInstanceOf(Located.Found.class);
    assertThat(ask(with, "la-2a", null, "LT-0105")).isInstanceOf(Located.Found.class);
    assertThat(ask(with, null, 1957, "LT-0105")).isInstanceOf(Located.Found.class);
  }

  @Test
  void listsEverySeriesThatATextFits() {
    List<Entry> entries = new ArrayList<>(SmallCatalogue.records().entries());
    entries.add(new Series("x", "turnstone", null, 4, false, null, List.of()));
    entries.add(block("x-1", "x", "1", "9", "la-2", 1956, false));
    Catalogue both = Catalogue.of(Records.of(entries, SmallCatalogue.records().pictures()));
    assertThat(both.read("7").stream().map(SerialMatch::text)).containsExactly("7", "0007");
    assertThat(candidates(ask(both, null, null, "7")))
        .containsExactlyInAnyOrder("la-5 1961", "la-2 1956");
    assertThat(ask(both, "la-2", null, "7")).isInstanceOf(Located.Found.class);
  }

  @Test
  void holdsEveryLaterSerialInABlockWithoutAnEnd() {
    Catalogue with = with(block("open", "lt", "LT-0200", null, "la-2a", 1960, false));
    assertThat(ask(with, null, null, "LT-0199")).isInstanceOf(Located.NoBlock.class);
    assertThat(ask(with, null, null, "LT-0200")).isInstanceOf(Located.Found.class);
    assertThat(ask(with, null, null, "LT-999999999999")).isInstanceOf(Located.Found.class);
  }

  private static Located ask(
      Catalogue of, @Nullable String variant, @Nullable Integer year, @Nullable String serial) {
    return of.locate(new Question(variant, year, serial));
  }

  private static Variant variant(String key) {
    return SMALL.variant(key).orElseThrow();
  }

  private static List<String> blocksOf(Located located) {
    assertThat(located).isInstanceOf(Located.Contradiction.class);
    return ((Located.Contradiction) located).blocks().stream().map(SerialBlock::key).toList();
  }

  private static List<String> candidates(Located located) {
    assertThat(located).isInstanceOf(Located.Ambiguous.class);
    return ((Located.Ambiguous) located)
        .candidates().stream().map(p -> p.variant().key() + " " + p.year()).toList();
  }

  private static Catalogue with(SerialBlock... blocks) {
    List<Entry> entries = new ArrayList<>(SmallCatalogue.records().entries());
    entries.addAll(List.of(blocks));
    return Catalogue.of(Records.of(entries, SmallCatalogue.records().pictures()));
  }

  private static SerialBlock block(
      String key,
      String series,
      String first,
      @Nullable String last,
      String variant,
      Integer year,
      boolean intermixed) {
    return new SerialBlock(key, series, first, last, variant, year, intermixed, List.of());
  }
}
