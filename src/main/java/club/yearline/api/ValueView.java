package club.yearline.api;

import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureValue;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.Values;
import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A value on offer: a key with its label, or a number with its unit.
 *
 * @param value a value key (text), or a number
 */
record ValueView(
    @Schema(
            types = {"string", "number"},
            description = "A value key, or a number in the unit of the feature.")
        Object value,
    @Nullable String label,
    @Nullable String unit,
    @Coded(Fit.class) String fit,
    @Nullable BigDecimal takeRate) {

  static ValueView of(Feature feature, Offered offered) {
    Object value = offered.value();
    String label = null;
    if (feature.isNumber()) {
      value = Values.number(offered.value()).map(Object.class::cast).orElse(value);
    } else {
      label = feature.value(offered.value()).map(FeatureValue::label).orElse(null);
    }
    return new ValueView(value, label, feature.unit(), offered.fit().code(), offered.takeRate());
  }
}
