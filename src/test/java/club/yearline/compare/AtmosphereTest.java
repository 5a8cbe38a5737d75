package club.yearline.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import club.yearline.exchange.Asking;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Against {@code published/atmosphere.csv} and {@code density_altitude.csv}; the source of each row
 * stands in the row.
 */
class AtmosphereTest {

  private static final Path PUBLISHED = Path.of("src/test/resources/published");
  private static final double INCH_OF_MERCURY = 33.86389;

  /** A rule of thumb that came nearer than this would be one that we use. */
  private static final double UNLIKE = 0.05;

  private static final double SEA_LEVEL_DENSITY = 1.225;

  static List<CSVRecord> atmosphere() {
    return Asking.rows(PUBLISHED.resolve("atmosphere.csv"));
  }

  static List<CSVRecord> densityAltitudes() {
    return Asking.rows(PUBLISHED.resolve("density_altitude.csv"));
  }

  @ParameterizedTest
  @MethodSource("atmosphere")
  void publishedRowIsMet(CSVRecord row) {
    double feet = number(row, "altitude_ft");
    double value = number(row, "value");
    double tolerance = number(row, "tolerance");
    String quantity = row.get("quantity");
    if (quantity.startsWith("rule_of_thumb_")) {
      double ours = quantity(quantity.substring("rule_of_thumb_".length()), feet);
      assertThat(ours).as(row.toString()).isNotCloseTo(value, within(UNLIKE));
    } else {
      assertThat(quantity(quantity, feet)).as(row.toString()).isCloseTo(value, within(tolerance));
    }
  }

  /** "from memory": 1.225 kg/m3 at sea level. */
  private static double quantity(String name, double feet) {
    return switch (name) {
      case "temperature_c" -> Atmosphere.temperature(feet);
      case "temperature_f" -> Atmosphere.temperature(feet) * 1.8 + 32;
      case "temperature_k" -> Atmosphere.temperature(feet) + 273.15;
      case "pressure_hpa" -> Atmosphere.pressure(feet);
      case "pressure_inhg" -> Atmosphere.pressure(feet) / INCH_OF_MERCURY;
      case "pressure_ratio" -> Atmosphere.pressure(feet) / Atmosphere.SEA_LEVEL_PRESSURE;
      case "density_ratio" -> Atmosphere.densityRatio(feet);
      case "density_percent" -> Atmosphere.densityRatio(feet) * 100;
      case "density_kg_m3" -> Atmosphere.densityRatio(feet) * SEA_LEVEL_DENSITY;
      case "inverse_root_density_ratio" -> 1 / Math.sqrt(Atmosphere.densityRatio(feet));
      default -> throw new IllegalArgumentException(name);
    };
  }

  @ParameterizedTest
  @MethodSource("densityAltitudes")
  void densityAltitudeIsTheExactOneAndNoRuleOfThumb(CSVRecord row) {
    double ours =
        Atmosphere.densityAltitude(number(row, "pressure_altitude_ft"), number(row, "oat_c"));
    assertThat(ours).isCloseTo(number(row, "exact_ft"), within(number(row, "tolerance_ft")));
    assertThat(ours).isNotCloseTo(number(row, "rule_118_8_ft"), within(5.0));
    assertThat(ours).isNotCloseTo(number(row, "rule_120_ft"), within(5.0));
  }

  @Test
  void standardSettingMakesPressureAltitudeTheElevation() {
    assertThat(Atmosphere.pressureAltitude(1200, 1013.25)).isCloseTo(1200, within(1e-9));
  }

  /** The rows of atmosphere.csv read backwards: 977.166 hPa stands for 1000 ft. */
  @ParameterizedTest
  @CsvSource({"977.166, 1000", "942.129, 2000", "1013.25, 0"})
  void settingMovesTheScaleByTheHeightItStandsFor(double setting, double feet) {
    assertThat(Atmosphere.pressureAltitude(500, setting)).isCloseTo(500 + feet, within(0.1));
  }

  @Test
  void lowPressureIsAHigherPressureAltitudeAndHeatAHigherDensityAltitude() {
    assertThat(Atmosphere.pressureAltitude(500, 990)).isGreaterThan(500);
    assertThat(Atmosphere.pressureAltitude(500, 1030)).isLessThan(500);
    double standard = Atmosphere.temperature(3000);
    assertThat(Atmosphere.densityAltitude(3000, standard)).isCloseTo(3000, within(1e-6));
    assertThat(Atmosphere.densityAltitude(3000, standard + 1)).isGreaterThan(3000);
    assertThat(Atmosphere.densityAltitude(3000, standard - 1)).isLessThan(3000);
  }

  private static double number(CSVRecord row, String field) {
    return Double.parseDouble(row.get(field));
  }
}
