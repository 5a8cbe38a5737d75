package club.yearline.testing;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Finding;
import club.yearline.effectivity.Findings;
import club.yearline.effectivity.Records;
import club.yearline.effectivity.SerialBlock;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CataloguesTest {

  static LongStream seeds() {
    return LongStream.range(0, 300);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void haveNoErrorAmongTheirFindings(long seed) {
    assertThat(Findings.in(Catalogues.random(seed))).noneMatch(Finding::isError);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void followFromTheSeed(long seed) {
    assertThat(Catalogues.random(seed)).isEqualTo(Catalogues.random(seed));
  }

  @Test
  void meetEveryKindOfCutInAndBlock() {
    List<Records> all = seeds().mapToObj(Catalogues::random).toList();
    List<CutIn> cutIns =
        all.stream().flatMap(r -> r.changes().stream()).flatMap(c -> c.cutIns().stream()).toList();
    List<SerialBlock> blocks = all.stream().flatMap(r -> r.blocks().stream()).toList();
    assertMet(cutIns, CutIn::atStart);
    assertMet(cutIns, c -> c.firstYear() == null && c.settledYear() != null);
    assertMet(cutIns, c -> c.firstYear() != null && c.settledYear() == null);
    assertMet(cutIns, c -> c.firstYear() != null && c.firstSerial() != null);
    assertMet(cutIns, c -> c.firstYear() == null && c.settledSerial() != null);
    assertMet(cutIns, c -> c.firstSerial() != null && c.settledSerial() == null);
    assertMet(blocks, b -> b.year() == null);
    assertMet(blocks, b -> b.lastSerial() == null);
    assertMet(blocks, SerialBlock::intermixed);
  }

  private static <T> void assertMet(List<T> all, Predicate<T> kind) {
    assertThat(all.stream().filter(kind).count()).isGreaterThan(20);
  }
}
