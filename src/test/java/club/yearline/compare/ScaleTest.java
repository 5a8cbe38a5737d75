package club.yearline.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import club.yearline.exchange.Asking;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Conversion against {@code published/units.csv}; the source of each row stands in the row. */
class ScaleTest {

  private static final Map<String, Scale> MORE = Map.of("km/h", Scale.KM_H);

  static List<CSVRecord> rows() {
    return Asking.rows(Path.of("src/test/resources/published/units.csv")).stream()
        .filter(r -> scale(r, "from_unit").isPresent() && scale(r, "to_unit").isPresent())
        .toList();
  }

  private static Optional<Scale> scale(CSVRecord row, String field) {
    return Scale.of(row.get(field)).or(() -> Optional.ofNullable(MORE.get(row.get(field))));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void publishedConversionIsMet(CSVRecord row) {
    BigDecimal converted =
        scale(row, "from_unit")
            .orElseThrow()
            .convert(new BigDecimal(row.get("value")), scale(row, "to_unit").orElseThrow());
    BigDecimal expected = new BigDecimal(row.get("converted"));
    BigDecimal tolerance = new BigDecimal(row.get("tolerance"));
    if (tolerance.signum() == 0) {
      assertThat(converted).as(row.toString()).isEqualByComparingTo(expected);
    } else {
      assertThat(converted).as(row.toString()).isCloseTo(expected, within(tolerance));
    }
  }

  @Test
  void mostPublishedRowsAreChecked() {
    assertThat(rows()).hasSizeGreaterThanOrEqualTo(20);
    assertThat(rows()).filteredOn(r -> r.get("tolerance").equals("0")).hasSizeGreaterThan(3);
  }

  /** The exact factors of NIST SP 811 (as quoted in published/units.csv) put together. */
  @Test
  void horsepowerIsExact() {
    assertThat(Scale.HP.convert(BigDecimal.ONE, Scale.KW))
        .isEqualByComparingTo("0.74569987158227022");
  }

  @ParameterizedTest
  @EnumSource(Scale.class)
  void everyUnitConvertsThereAndBack(Scale scale) {
    BigDecimal number = new BigDecimal("1234.5");
    for (Scale other : Scale.values()) {
      if (scale.measuresLike(other)) {
        assertThat(other.convert(scale.convert(number, other), scale))
            .isCloseTo(number, within(new BigDecimal("1e-25")));
      }
    }
  }

  @Test
  void unitsOfOtherKindsDoNotConvert() {
    assertThat(Scale.LB.measuresLike(Scale.GAL)).isFalse();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Scale.LB.convert(BigDecimal.ONE, Scale.GAL))
        .withMessageContaining("lb");
    assertThat(Scale.of("V")).isEmpty();
  }
}
