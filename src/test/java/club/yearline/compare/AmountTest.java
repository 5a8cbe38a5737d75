package club.yearline.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AmountTest {

  @ParameterizedTest
  @CsvSource({
    "2300, LB, KG, 1043",
    "109, KT, KM_H, 202",
    "38, GAL, L, 144",
    "8.3, GAL_H, L_H, 31.4",
    "174, FT2, M2, 16.2",
    "132.5, FT2, M2, 12.31",
    "150, HP, KW, 112",
    "660, FT_MIN, M_S, 3.35",
    "4, COUNT, COUNT, 4"
  })
  void convertsWithoutInventingDigits(String recorded, Scale from, Scale to, String shown) {
    assertThat(amount(recorded, from).in(to).number()).isEqualTo(shown);
  }

  @ParameterizedTest
  @CsvSource({"8.30, 8.30", "120, 120", "0.5, 0.5"})
  void showsWhatIsRecordedAsItIsRecorded(String recorded, String shown) {
    assertThat(amount(recorded, Scale.GAL_H).number()).isEqualTo(shown);
  }

  @Test
  void aSumIsAsCoarseAsItsCoarsestTerm() {
    assertThat(amount("100.25", Scale.LB).minus(amount("3", Scale.LB)).text())
        .isEqualTo("97\u00a0lb");
    assertThat(amount("4.58", Scale.H).minus(Amount.exactly("0.5", Scale.H)).number())
        .isEqualTo("4.08");
  }

  @Test
  void aQuotientHasAsManyDigitsAsItsPoorestFactor() {
    Amount time = amount("38", Scale.GAL).over(amount("8.3", Scale.GAL_H), Scale.H);
    assertThat(time.number()).isEqualTo("4.6");
    assertThat(time.carried()).isEqualTo("4.58");
    assertThat(time.value()).isBetween(new BigDecimal("4.578"), new BigDecimal("4.579"));
    assertThat(amount("5", Scale.GAL).over(amount("6", Scale.GAL_H), Scale.H).number())
        .isEqualTo("0.83");
  }

  @Test
  void fuelIsWeighedToTheWholePoundWhereItIsMeasuredToTheWholeGallon() {
    assertThat(amount("38", Scale.GAL).timesAgreed(amount("6.0", Scale.LB_GAL), Scale.LB).number())
        .isEqualTo("228");
  }

  @Test
  void writesARealMinusAndNoNegativeNought() {
    assertThat(amount("3", Scale.LB).minus(amount("10", Scale.LB)).number()).isEqualTo("−7");
    Amount tiny = new Amount(new BigDecimal("-0.2"), Scale.LB, 0);
    assertThat(tiny.number()).isEqualTo("0");
  }

  private static Amount amount(String number, Scale scale) {
    return Amount.recorded(new BigDecimal(number), scale);
  }
}
