package club.yearline.effectivity;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A value available new at some point.
 *
 * @param value a value key of the feature, or a number in its unit, as recorded
 * @param fit standard or option
 * @param takeRate share (0 to 1) of airframes that left with the option; null where not recorded
 */
public record Offered(String value, Fit fit, @Nullable BigDecimal takeRate) {

  /** The value in the one form in which equal values are equal texts: {@code 120.0} is 120. */
  public String canonicalValue() {
    return Values.canonical(value);
  }
}
