package club.yearline.compare;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * One thing that a trip asks of an aircraft.
 *
 * @param kind which
 * @param margin what is left over, below zero where it falls short; null where it cannot be told
 * @param missing the figures without which it cannot be told
 */
record Check(Kind kind, @Nullable Interval margin, List<Figure> missing) {

  /**
   * Conversion to and fro leaves a trace in the last of thirty-odd digits: that is no shortfall.
   */
  private static final BigDecimal TRACE = new BigDecimal("1e-9");

  Check {
    missing = List.copyOf(missing);
  }

  /** What is asked. */
  enum Kind {
    /** The tanks hold the fuel and the reserve. */
    FUEL,
    /** The useful load carries fuel, people and bags. */
    PAYLOAD,
    /** The baggage compartment takes the bags. */
    BAGGAGE,
    /** Everybody has a seat. */
    SEATS;

    /** The end of its message's key. */
    String code() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  Outcome outcome() {
    if (margin == null) {
      return Outcome.UNTOLD;
    }
    if (!isShort(margin.low())) {
      return Outcome.CAN;
    }
    return isShort(margin.high()) ? Outcome.CANNOT : Outcome.DEPENDS;
  }

  private static boolean isShort(Amount amount) {
    return amount.value().add(TRACE).signum() < 0;
  }
}
