package club.yearline.compare;

import static club.yearline.compare.Figure.CRUISE_SPEED;
import static club.yearline.compare.Figure.EMPTY_WEIGHT;
import static club.yearline.compare.Figure.FUEL_FLOW;
import static club.yearline.compare.Figure.GROSS_WEIGHT;
import static club.yearline.compare.Figure.POWER;
import static club.yearline.compare.Figure.USABLE_FUEL;
import static club.yearline.compare.Figure.WING_AREA;

import java.util.List;
import java.util.Locale;

/** What follows from the figures by arithmetic alone. */
enum Derived {
  /** Gross weight less standard empty weight. */
  USEFUL_LOAD(Scale.LB, GROSS_WEIGHT, EMPTY_WEIGHT),
  /** What is left of the useful load when the tanks are full. */
  PAYLOAD_FULL_FUEL(Scale.LB, GROSS_WEIGHT, EMPTY_WEIGHT, USABLE_FUEL),
  /** How long the fuel lasts in cruise, less the reserve. */
  ENDURANCE(Scale.H, USABLE_FUEL, FUEL_FLOW),
  /** How far that leads without wind. */
  RANGE(Scale.NMI, USABLE_FUEL, FUEL_FLOW, CRUISE_SPEED),
  WING_LOADING(Scale.LB_FT2, GROSS_WEIGHT, WING_AREA),
  POWER_LOADING(Scale.LB_HP, GROSS_WEIGHT, POWER);

  /** All of them, in the order of the page. */
  static final List<Derived> ALL = List.of(values());

  private final Scale scale;
  private final List<Figure> needs;

  Derived(Scale scale, Figure... needs) {
    this.scale = scale;
    this.needs = List.of(needs);
  }

  /** The unit that it is worked out in. */
  Scale scale() {
    return scale;
  }

  /** The figures without which there is none. */
  List<Figure> needs() {
    return needs;
  }

  /** The end of its message's key. */
  String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
