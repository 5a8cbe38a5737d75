package club.yearline.compare;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import javax.measure.IncommensurableException;
import javax.measure.MetricPrefix;
import javax.measure.Unit;
import systems.uom.common.USCustomary;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

/** A unit in which figures are recorded or shown. Conversion is the units library's. */
enum Scale {
  LB("lb", USCustomary.POUND),
  KG("kg", Units.KILOGRAM),
  GAL("gal", USCustomary.GALLON_LIQUID),
  L("l", "L", Units.LITRE),
  KT("kt", USCustomary.KNOT),
  MPH("mph", USCustomary.MILE_PER_HOUR),
  KM_H("km/h", Units.KILOMETRE_PER_HOUR),
  FT("ft", USCustomary.FOOT),
  M("m", Units.METRE),
  IN("in", USCustomary.INCH),
  MM("mm", MetricPrefix.MILLI(Units.METRE)),
  FT2("ft2", "ft²", USCustomary.FOOT.pow(2)),
  M2("m2", "m²", Units.SQUARE_METRE),
  HP("hp", horsepower()),
  KW("kW", MetricPrefix.KILO(Units.WATT)),
  GAL_H("gal/h", USCustomary.GALLON_LIQUID.divide(Units.HOUR)),
  L_H("l/h", "L/h", Units.LITRE.divide(Units.HOUR)),
  FT_MIN("ft/min", USCustomary.FOOT.divide(Units.MINUTE)),
  M_S("m/s", Units.METRE_PER_SECOND),
  COUNT("count", "", AbstractUnit.ONE),
  NMI("nmi", USCustomary.NAUTICAL_MILE),
  KM("km", MetricPrefix.KILO(Units.METRE)),
  H("h", Units.HOUR),
  MINUTE("min", Units.MINUTE),
  LB_GAL("lb/gal", USCustomary.POUND.divide(USCustomary.GALLON_LIQUID)),
  KG_L("kg/L", Units.KILOGRAM.divide(Units.LITRE)),
  LB_FT2("lb/ft2", "lb/ft²", USCustomary.POUND.divide(USCustomary.FOOT.pow(2))),
  KG_M2("kg/m2", "kg/m²", Units.KILOGRAM.divide(Units.SQUARE_METRE)),
  LB_HP("lb/hp", USCustomary.POUND.divide(horsepower())),
  KG_KW("kg/kW", Units.KILOGRAM.divide(MetricPrefix.KILO(Units.WATT)));

  private static final MathContext DIGITS = MathContext.DECIMAL128;

  private final String code;
  private final String sign;
  private final Unit<?> unit;

  Scale(String code, Unit<?> unit) {
    this(code, code, unit);
  }

  Scale(String code, String sign, Unit<?> unit) {
    this.code = code;
    this.sign = sign;
    this.unit = unit;
  }

  /** 550 foot-pounds of force a second; the library's own is cut off after thirteen digits. */
  private static Unit<?> horsepower() {
    return USCustomary.POUND
        .multiply(new BigDecimal("9.80665"))
        .multiply(Units.METRE)
        .divide(Units.SECOND.pow(2))
        .multiply(USCustomary.FOOT)
        .divide(Units.SECOND)
        .multiply(550);
  }

  /** The unit that a feature's record names; empty where it is none that we know. */
  static Optional<Scale> of(String code) {
    for (Scale scale : values()) {
      if (scale.code.equals(code)) {
        return Optional.of(scale);
      }
    }
    return Optional.empty();
  }

  /** The unit as it stands after a number; empty for what is counted. */
  String sign() {
    return sign;
  }

  /** Whether both measure the same kind of thing. */
  boolean measuresLike(Scale other) {
    return unit.isCompatible(other.unit);
  }

  /**
   * A number of this unit in another.
   *
   * @throws IllegalArgumentException if the two do not measure the same kind of thing
   */
  BigDecimal convert(BigDecimal value, Scale to) {
    if (this == to) {
      return value;
    }
    try {
      Number converted = unit.getConverterToAny(to.unit).convert(value);
      return new BigDecimal(converted.toString(), DIGITS);
    } catch (IncommensurableException e) {
      throw new IllegalArgumentException(code + " cannot be told in " + to.code, e);
    }
  }
}
