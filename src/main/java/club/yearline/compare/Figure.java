package club.yearline.compare;

import java.util.List;
import java.util.Optional;

/**
 * A figure that comparisons use: a number feature with a key of its own. The first part describes
 * the aircraft, the rest what it does.
 */
enum Figure {
  POWER("power", Scale.HP),
  GROSS_WEIGHT("gross-weight", Scale.LB),
  EMPTY_WEIGHT("standard-empty-weight", Scale.LB),
  USABLE_FUEL("usable-fuel", Scale.GAL),
  CRUISE_SPEED("cruise-speed", Scale.KT),
  FUEL_FLOW("cruise-fuel-flow", Scale.GAL_H),
  WING_AREA("wing-area", Scale.FT2),
  WING_SPAN("wing-span", Scale.FT),
  STALL_SPEED("stall-speed", Scale.KT),
  CLIMB_RATE("climb-rate", Scale.FT_MIN),
  TAKE_OFF("takeoff-over-50ft", Scale.FT),
  LANDING("landing-over-50ft", Scale.FT),
  BAGGAGE_LIMIT("baggage-limit", Scale.LB),
  SEATS("seats", Scale.COUNT);

  /** All of them, in the order of the page. */
  static final List<Figure> ALL = List.of(values());

  private final String key;
  private final Scale scale;

  Figure(String key, Scale scale) {
    this.key = key;
    this.scale = scale;
  }

  /** The figure of a feature; empty where the feature is none of them. */
  static Optional<Figure> of(String key) {
    return ALL.stream().filter(f -> f.key.equals(key)).findFirst();
  }

  /** The key of its feature. */
  String key() {
    return key;
  }

  /** The unit that the arithmetic is done in. */
  Scale scale() {
    return scale;
  }
}
