package club.yearline.effectivity;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** Recorded values: numbers are equal by value, all else by text. */
public final class Values {

  private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]{1,18}(\\.[0-9]{1,18})?");

  private Values() {}

  /** Reads a plain decimal number of up to 18 digits on each side of the point. */
  public static Optional<BigDecimal> number(String text) {
    return NUMBER.matcher(text).matches() ? Optional.of(new BigDecimal(text)) : Optional.empty();
  }

  /** The one text by which equal values are equal. */
  public static String canonical(String text) {
    return number(text)
        .map(n -> n.signum() == 0 ? "0" : n.stripTrailingZeros().toPlainString())
        .orElse(text);
  }
}
