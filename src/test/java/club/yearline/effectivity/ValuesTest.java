package club.yearline.effectivity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ValuesTest {

  @ParameterizedTest(name = "{0} is {1}")
  @CsvSource({
    "120, 120",
    "120.0, 120",
    "120.50, 120.5",
    "0120, 120",
    "+120, 120",
    "-3, -3",
    "-3.10, -3.1",
    "0, 0",
    "0.000, 0",
    "-0, 0",
    "100, 100",
    "999999999999999999, 999999999999999999",
    "0.000000000000000001, 0.000000000000000001",
    "nose-bowl, nose-bowl",
    "1e3, 1e3",
    "12., 12.",
    ".5, .5",
    "1234567890123456789.0, 1234567890123456789.0",
  })
  void equalNumbersAreOneText(String text, String canonical) {
    assertThat(Values.canonical(text)).isEqualTo(canonical);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " 1", "1 ", "1,5", "1e3", "0x1", "NaN", "--1", "1.2.3", "١"})
  void whatIsNoPlainDecimalIsNoNumber(String text) {
    assertThat(Values.number(text)).isEmpty();
  }
}
