package club.yearline.compare;

import club.yearline.effectivity.Fit;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Builds for tests, written as their figures. */
final class Figures {

  private final Map<Figure, Recorded> figures = new EnumMap<>(Figure.class);

  private Figures() {
    Figure.ALL.forEach(f -> figures.put(f, Recorded.missing(f, Missing.UNRECORDED)));
  }

  static Figures none() {
    return new Figures();
  }

  /** A four-seater of even numbers. */
  static Figures tourer() {
    return none()
        .with(Figure.GROSS_WEIGHT, "2300")
        .with(Figure.EMPTY_WEIGHT, "1400")
        .with(Figure.USABLE_FUEL, "40")
        .with(Figure.CRUISE_SPEED, "100")
        .with(Figure.FUEL_FLOW, "8.0")
        .with(Figure.WING_AREA, "174")
        .with(Figure.POWER, "150")
        .with(Figure.BAGGAGE_LIMIT, "120")
        .with(Figure.SEATS, "4");
  }

  /** With one or several values, in the unit of the arithmetic. */
  Figures with(Figure figure, String... values) {
    return with(figure, figure.scale(), values);
  }

  Figures with(Figure figure, Scale scale, String... values) {
    List<Recorded.Value> all =
        Stream.of(values)
            .map(v -> new Recorded.Value(Amount.recorded(new BigDecimal(v), scale), Fit.STANDARD))
            .toList();
    figures.put(figure, new Recorded(figure, all, null));
    return this;
  }

  Figures without(Figure figure) {
    figures.put(figure, Recorded.missing(figure, Missing.UNRECORDED));
    return this;
  }

  Build build() {
    return new Build(null, figures, Amount.recorded(new BigDecimal("6.0"), Scale.LB_GAL));
  }
}
