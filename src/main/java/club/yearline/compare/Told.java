package club.yearline.compare;

import club.yearline.effectivity.Fit;
import club.yearline.web.Phrases;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Says amounts in the units that the reader has chosen. */
final class Told {

  private static final BigDecimal TRACE = new BigDecimal("1e-9");

  /** The figure whose recorded unit is taken for what was worked out in a unit. */
  private static final Map<Scale, Figure> MODELS =
      new EnumMap<>(
          Map.of(
              Scale.LB, Figure.GROSS_WEIGHT,
              Scale.GAL, Figure.USABLE_FUEL,
              Scale.KT, Figure.CRUISE_SPEED,
              Scale.GAL_H, Figure.FUEL_FLOW,
              Scale.FT2, Figure.WING_AREA,
              Scale.HP, Figure.POWER,
              Scale.FT, Figure.TAKE_OFF,
              Scale.FT_MIN, Figure.CLIMB_RATE));

  private final UnitSystem system;
  private final Phrases phrases;
  private final Map<Figure, Scale> recorded = new EnumMap<>(Figure.class);

  Told(UnitSystem system, List<Column> columns, Phrases phrases) {
    this.system = system;
    this.phrases = phrases;
    for (Column column : columns) {
      column.builds().stream()
          .flatMap(b -> b.figures().values().stream())
          .forEach(
              r -> r.values().forEach(v -> recorded.putIfAbsent(r.figure(), v.amount().scale())));
    }
  }

  /** The unit to show a figure in. */
  Scale scale(Figure figure) {
    return system.show(figure.scale(), recorded.getOrDefault(figure, figure.scale()));
  }

  /** The unit to show something in that was worked out in another. */
  Scale scale(Scale worked) {
    if (system != UnitSystem.RECORDED) {
      return system.show(worked);
    }
    if (worked == Scale.NMI) {
      return scale(Figure.CRUISE_SPEED) == Scale.KM_H ? Scale.KM : Scale.NMI;
    }
    Figure model = MODELS.get(worked);
    return model == null ? worked : scale(model);
  }

  /** Something worked out, to the place that counts. */
  String text(Interval interval) {
    return text(interval, scale(interval.low().scale()));
  }

  /** A figure, to the place that counts. */
  String text(Figure figure, Interval interval) {
    return text(interval, scale(figure));
  }

  String text(Amount amount) {
    return text(Interval.of(amount));
  }

  /** To the place that counts, in the given unit. */
  String text(Interval interval, Scale scale) {
    Interval shown = interval.in(scale);
    return range(shown.low().number(), shown.high().text(), shown.low().text());
  }

  /** A number in a line of arithmetic, with one place more than counts. */
  String carried(Interval interval) {
    Interval shown = interval.in(scale(interval.low().scale()));
    return range(shown.low().carried(), shown.high().carriedText(), shown.low().carriedText());
  }

  /** What is recorded, each value; several are joined by "or", options are said to be such. */
  String recorded(Recorded recorded) {
    Scale scale = scale(recorded.figure());
    return recorded.values().stream()
        .map(v -> option(v.fit(), v.amount().in(scale).text()))
        .collect(Collectors.joining(phrases.of("compare.or")));
  }

  private String option(Fit fit, String text) {
    return fit == Fit.OPTION ? phrases.of("compare.option", text) : text;
  }

  private String range(String low, String highText, String lowText) {
    return lowText.equals(highText) ? lowText : phrases.of("compare.range", low, highText);
  }

  /** How much, regardless of sign; what rounds to nothing but is something is said to be so. */
  String size(Amount amount) {
    Amount shown = amount.abs().in(scale(amount.scale()));
    return shown.isLost() && shown.value().compareTo(TRACE) > 0
        ? phrases.of("compare.less-than", shown.smallest().text())
        : shown.text();
  }
}
