package club.yearline.compare;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A number with its unit, kept in full, and the last decimal place of it that its source vouches
 * for. Arithmetic passes the place on: sums are as coarse as their coarsest term, products and
 * quotients have as many significant digits as their poorest factor.
 *
 * @param value the number, unrounded
 * @param scale its unit
 * @param place the last place that counts: 0 for ones, -1 for tenths, 1 for tens; {@link #EXACT}
 *     where it is so by definition or because the reader says so
 */
record Amount(BigDecimal value, Scale scale, int place) {

  /** The place of numbers that limit nothing. */
  static final int EXACT = Integer.MIN_VALUE;

  private static final MathContext DIGITS = MathContext.DECIMAL128;

  /** Decimals of an exact number that is shown, and from which size on one is enough. */
  private static final int MOST_DECIMALS = 2;

  private static final BigDecimal LARGE = new BigDecimal(100);
  private static final int FEWEST_DIGITS = 2;

  /** A number as recorded; its last written digit is the last that counts. */
  static Amount recorded(BigDecimal value, Scale scale) {
    return new Amount(value, scale, -Math.max(value.scale(), 0));
  }

  /** A number that is exactly so. */
  static Amount exactly(String value, Scale scale) {
    return new Amount(new BigDecimal(value), scale, EXACT);
  }

  /** Nothing at all of a unit. */
  static Amount none(Scale scale) {
    return exactly("0", scale);
  }

  /** The same amount in another unit, to the place nearest to the one that counts here. */
  Amount in(Scale other) {
    if (scale == other) {
      return this;
    }
    return new Amount(scale.convert(value, other), other, isExact() ? EXACT : placeIn(other));
  }

  /** A place is let be up to two and a half times coarser than the source's, never more. */
  private int placeIn(Scale other) {
    BigDecimal step = scale.convert(BigDecimal.ONE.scaleByPowerOfTen(place), other);
    BigDecimal lead = step.scaleByPowerOfTen(-exponent(step));
    return exponent(step) + (lead.compareTo(new BigDecimal(4)) >= 0 ? 1 : 0);
  }

  Amount plus(Amount other) {
    return new Amount(value.add(same(other)), scale, Math.max(place, other.place));
  }

  Amount minus(Amount other) {
    return new Amount(value.subtract(same(other)), scale, Math.max(place, other.place));
  }

  Amount times(Amount other, Scale product) {
    return product(value.multiply(other.value, DIGITS), other, product);
  }

  /**
   * @throws ArithmeticException if the other is zero
   */
  Amount over(Amount other, Scale quotient) {
    return product(value.divide(other.value, DIGITS), other, quotient);
  }

  /** Times something that is so by convention: then the places after the point stay the same. */
  Amount timesAgreed(Amount agreed, Scale product) {
    Amount plain = times(agreed, product);
    return new Amount(plain.value, product, Math.min(plain.place, place));
  }

  private Amount product(BigDecimal result, Amount other, Scale unit) {
    int digits = Math.min(significant(), other.significant());
    boolean exact = digits == Integer.MAX_VALUE || result.signum() == 0;
    int last = exact ? EXACT : exponent(result) - Math.max(digits, FEWEST_DIGITS) + 1;
    return new Amount(result, unit, last);
  }

  private int significant() {
    return isExact() ? Integer.MAX_VALUE : exponent(value) - place + 1;
  }

  private static int exponent(BigDecimal number) {
    return number.signum() == 0 ? 0 : number.precision() - number.scale() - 1;
  }

  private boolean isExact() {
    return place == EXACT;
  }

  private BigDecimal same(Amount other) {
    return other.scale == scale ? other.value : other.in(scale).value;
  }

  /** The same, to the place that counts. */
  Amount rounded() {
    return isExact()
        ? this
        : new Amount(value.setScale(-place, RoundingMode.HALF_UP), scale, place);
  }

  Amount abs() {
    return new Amount(value.abs(), scale, place);
  }

  /** The least that the place which counts can show. */
  Amount smallest() {
    return new Amount(BigDecimal.ONE.scaleByPowerOfTen(place), scale, place);
  }

  /** Whether it rounds to nothing. */
  boolean isLost() {
    return !isExact()
        && value.abs().compareTo(BigDecimal.valueOf(5).scaleByPowerOfTen(place - 1)) < 0;
  }

  int compare(Amount other) {
    return value.compareTo(same(other));
  }

  /** The number to the place that counts, without unit. */
  String number() {
    return isExact()
        ? plain(value, value.abs().compareTo(LARGE) < 0 ? MOST_DECIMALS : 1)
        : fixed(place);
  }

  /** The number with one more place than counts, as a step of arithmetic carries it. */
  String carried() {
    return isExact() ? number() : plain(value, Math.max(1 - place, 0));
  }

  private String fixed(int to) {
    BigDecimal rounded = value.setScale(-to, RoundingMode.HALF_UP);
    BigDecimal shown = rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    return sign(shown.signum() == 0 ? shown.abs().toPlainString() : shown.toPlainString());
  }

  private static String plain(BigDecimal number, int decimals) {
    BigDecimal rounded = number.setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
    return sign((rounded.scale() < 0 ? rounded.setScale(0) : rounded).toPlainString());
  }

  private static String sign(String number) {
    return number.replace('-', '−');
  }

  /** A number with its unit, as shown. */
  String text() {
    return withUnit(number());
  }

  /** A number with one more place than counts and its unit. */
  String carriedText() {
    return withUnit(carried());
  }

  private String withUnit(String number) {
    return scale.sign().isEmpty() ? number : number + "\u00a0" + scale.sign();
  }
}
