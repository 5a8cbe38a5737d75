package club.yearline.compare;

import club.yearline.web.Phrases;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * The field as shown.
 *
 * @param pressureAltitude stamped
 * @param densityAltitude stamped; says why there is none
 * @param lines how they were found
 */
public record FieldView(String pressureAltitude, String densityAltitude, List<String> lines) {

  /** The place to which a height is told that a temperature or pressure went into: tens of feet. */
  private static final int TENS = 1;

  static FieldView of(Field field, Told told, Phrases phrases) {
    double height = field.pressureAltitude();
    Amount elevation = feet(field.elevation(), 0);
    Amount pressure = feet(height, field.standardSetting() ? 0 : TENS);
    List<String> lines = new ArrayList<>();
    String key = field.standardSetting() ? "compare.field.standard" : "compare.field.setting";
    lines.add(
        phrases.of(
            key,
            told.text(elevation),
            hectopascals(field.setting()),
            told.text(feet(height - field.elevation(), TENS)),
            told.text(pressure)));
    Double density = field.densityAltitude();
    if (density == null) {
      lines.add(phrases.of("compare.field.no-temperature"));
      return new FieldView(told.text(pressure), phrases.of("compare.none"), lines);
    }
    Amount found = feet(density, TENS);
    lines.add(
        phrases.of(
            "compare.field.density",
            told.text(pressure),
            degrees(Atmosphere.temperature(height)),
            degrees(field.temperature() == null ? 0 : field.temperature()),
            told.text(found)));
    return new FieldView(told.text(pressure), told.text(found), lines);
  }

  private static Amount feet(double feet, int place) {
    return new Amount(BigDecimal.valueOf(feet), Scale.FT, place);
  }

  private static String degrees(double celsius) {
    return Amount.recorded(BigDecimal.valueOf(Math.round(celsius * 10), 1), Scale.COUNT).carried();
  }

  private static String hectopascals(double pressure) {
    return BigDecimal.valueOf(Math.round(pressure * 100), 2).stripTrailingZeros().toPlainString();
  }
}
