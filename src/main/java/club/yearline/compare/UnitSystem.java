package club.yearline.compare;

import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The units in which a page shows figures. */
enum UnitSystem {
  /** Each figure in the unit of its record; what follows from figures, in pounds and feet. */
  RECORDED,
  METRIC,
  /** Pounds, US gallons, feet, knots and nautical miles. */
  IMPERIAL;

  private static final Map<Scale, Scale> TO_METRIC =
      Map.ofEntries(
          Map.entry(Scale.LB, Scale.KG),
          Map.entry(Scale.GAL, Scale.L),
          Map.entry(Scale.KT, Scale.KM_H),
          Map.entry(Scale.FT, Scale.M),
          Map.entry(Scale.FT2, Scale.M2),
          Map.entry(Scale.HP, Scale.KW),
          Map.entry(Scale.GAL_H, Scale.L_H),
          Map.entry(Scale.FT_MIN, Scale.M_S),
          Map.entry(Scale.NMI, Scale.KM),
          Map.entry(Scale.LB_GAL, Scale.KG_L),
          Map.entry(Scale.LB_FT2, Scale.KG_M2),
          Map.entry(Scale.LB_HP, Scale.KG_KW));

  private final String code = name().toLowerCase(Locale.ROOT);

  /** The word used in addresses. */
  String code() {
    return code;
  }

  /** The system that an address names; as recorded where it names none. */
  static UnitSystem of(String code) {
    return List.of(values()).stream().filter(s -> s.code.equals(code)).findFirst().orElse(RECORDED);
  }

  /**
   * The unit to show a figure in.
   *
   * @param worked the unit that the arithmetic is done in
   * @param recorded the unit of the record
   */
  Scale show(Scale worked, Scale recorded) {
    return this == RECORDED ? recorded : show(worked);
  }

  /** The unit to show in what was worked out in another. */
  Scale show(Scale worked) {
    return this == METRIC ? TO_METRIC.getOrDefault(worked, worked) : worked;
  }
}
