package club.yearline.compare;

import java.math.BigDecimal;
import java.util.function.UnaryOperator;

/**
 * From the least to the most that something may be; both are the same where it is known.
 *
 * @param low the least
 * @param high the most, of the same unit
 */
record Interval(Amount low, Amount high) {

  static Interval of(Amount one) {
    return new Interval(one, one);
  }

  /** Whether least and most are the same. */
  boolean isOne() {
    return low.compare(high) == 0;
  }

  Interval plus(Interval other) {
    return new Interval(low.plus(other.low), high.plus(other.high));
  }

  Interval minus(Interval other) {
    return new Interval(low.minus(other.high), high.minus(other.low));
  }

  /** The product with another; neither is below zero. */
  Interval times(Interval other, Scale product) {
    return new Interval(low.times(other.low, product), high.times(other.high, product));
  }

  /** The product with something that is so by convention. */
  Interval timesAgreed(Amount agreed, Scale product) {
    return new Interval(low.timesAgreed(agreed, product), high.timesAgreed(agreed, product));
  }

  /** The quotient by another that is above zero; this one is not below zero. */
  Interval over(Interval other, Scale quotient) {
    return new Interval(low.over(other.high, quotient), high.over(other.low, quotient));
  }

  /** The least that holds both. */
  Interval around(Interval other) {
    return new Interval(
        low.compare(other.low) <= 0 ? low : other.low,
        high.compare(other.high) >= 0 ? high : other.high);
  }

  /** The same, with nothing instead of what is below zero. */
  Interval orNone() {
    return new Interval(orNone(low), orNone(high));
  }

  private static Amount orNone(Amount one) {
    return one.value().signum() < 0 ? new Amount(BigDecimal.ZERO, one.scale(), one.place()) : one;
  }

  Interval in(Scale scale) {
    UnaryOperator<Amount> told = amount -> amount.in(scale);
    return new Interval(told.apply(low), told.apply(high));
  }
}
