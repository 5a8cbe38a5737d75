package club.yearline.compare;

import static club.yearline.compare.Step.Term.first;
import static club.yearline.compare.Step.Term.minus;
import static club.yearline.compare.Step.Term.over;
import static club.yearline.compare.Step.Term.times;

import java.util.List;

/**
 * Works out what follows from the figures of one build. Where a figure is a range, so is what comes
 * of it: from the least favourable to the most favourable of what left the factory.
 */
final class Arithmetic {

  private final Build build;
  private final Amount reserve;

  /**
   * @param reserve the time to be left in the tanks on landing
   */
  Arithmetic(Build build, Amount reserve) {
    this.build = build;
    this.reserve = reserve;
  }

  /** Works out one derived figure, or says what is missing for it. */
  Worked of(Derived derived) {
    List<Figure> missing = build.missing(derived.needs());
    return missing.isEmpty() ? Worked.of(steps(derived)) : Worked.without(missing);
  }

  private List<Step> steps(Derived derived) {
    return switch (derived) {
      case USEFUL_LOAD -> List.of(usefulLoad());
      case PAYLOAD_FULL_FUEL -> payload();
      case ENDURANCE -> endurance();
      case RANGE -> range();
      case WING_LOADING -> List.of(loading(derived, Figure.WING_AREA));
      case POWER_LOADING -> List.of(loading(derived, Figure.POWER));
    };
  }

  Step usefulLoad() {
    Interval gross = figure(Figure.GROSS_WEIGHT);
    Interval empty = figure(Figure.EMPTY_WEIGHT);
    return new Step(
        Derived.USEFUL_LOAD.code(),
        List.of(first(Figure.GROSS_WEIGHT.key(), gross), minus(Figure.EMPTY_WEIGHT.key(), empty)),
        gross.minus(empty));
  }

  /** What fuel weighs. */
  Step weight(String name, String fuelName, Interval fuel) {
    Amount density = build.fuelDensity();
    return new Step(
        name,
        List.of(first(fuelName, fuel), times("fuel-density", Interval.of(density))),
        fuel.timesAgreed(density, Scale.LB));
  }

  private List<Step> payload() {
    Step load = usefulLoad();
    Step fuel = weight("full-fuel-weight", Figure.USABLE_FUEL.key(), figure(Figure.USABLE_FUEL));
    return List.of(
        load,
        fuel,
        new Step(
            Derived.PAYLOAD_FULL_FUEL.code(),
            List.of(first(load.name(), load.result()), minus(fuel.name(), fuel.result())),
            load.result().minus(fuel.result())));
  }

  private List<Step> endurance() {
    Interval fuel = figure(Figure.USABLE_FUEL);
    Interval flow = figure(Figure.FUEL_FLOW);
    Interval all = fuel.over(flow, Scale.H);
    Step dry =
        new Step(
            "time-to-dry",
            List.of(first(Figure.USABLE_FUEL.key(), fuel), over(Figure.FUEL_FLOW.key(), flow)),
            all);
    return List.of(
        dry,
        new Step(
            Derived.ENDURANCE.code(),
            List.of(first(dry.name(), all), minus("reserve", Interval.of(reserve))),
            all.minus(Interval.of(reserve)).orNone()));
  }

  private List<Step> range() {
    List<Step> time = endurance();
    Interval endurance = time.get(1).result();
    Interval speed = figure(Figure.CRUISE_SPEED);
    Step range =
        new Step(
            Derived.RANGE.code(),
            List.of(
                first(Derived.ENDURANCE.code(), endurance),
                times(Figure.CRUISE_SPEED.key(), speed)),
            endurance.times(speed, Scale.NMI));
    return List.of(time.get(0), time.get(1), range);
  }

  private Step loading(Derived derived, Figure by) {
    Interval gross = figure(Figure.GROSS_WEIGHT);
    return new Step(
        derived.code(),
        List.of(first(Figure.GROSS_WEIGHT.key(), gross), over(by.key(), figure(by))),
        gross.over(figure(by), derived.scale()));
  }

  Interval figure(Figure figure) {
    return build.figure(figure).orElseThrow();
  }
}
