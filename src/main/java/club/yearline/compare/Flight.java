package club.yearline.compare;

import static club.yearline.compare.Step.Term.first;
import static club.yearline.compare.Step.Term.minus;
import static club.yearline.compare.Step.Term.over;
import static club.yearline.compare.Step.Term.plus;
import static club.yearline.compare.Step.Term.times;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A trip flown by one build: the fuel it takes, what may be carried, and whether that is enough.
 */
final class Flight {

  /** The figures that a verdict may rest on. */
  static final List<Figure> FIGURES =
      List.of(
          Figure.GROSS_WEIGHT,
          Figure.EMPTY_WEIGHT,
          Figure.USABLE_FUEL,
          Figure.CRUISE_SPEED,
          Figure.FUEL_FLOW,
          Figure.BAGGAGE_LIMIT,
          Figure.SEATS);

  private static final List<Figure> FOR_FUEL = List.of(Figure.CRUISE_SPEED, Figure.FUEL_FLOW);
  private static final List<Figure> FOR_PAYLOAD =
      List.of(Figure.GROSS_WEIGHT, Figure.EMPTY_WEIGHT, Figure.CRUISE_SPEED, Figure.FUEL_FLOW);

  private final Build build;
  private final Trip trip;
  private final Arithmetic arithmetic;
  private final Worked fuel;
  private final Worked left;
  private final List<Check> checks = new ArrayList<>();

  Flight(Build build, Trip trip) {
    this.build = build;
    this.trip = trip;
    this.arithmetic = new Arithmetic(build, trip.reserve());
    this.fuel = work(FOR_FUEL, this::fuelSteps);
    this.left = work(FOR_PAYLOAD, this::payloadSteps);
    checks.add(fuelCheck());
    checks.add(new Check(Check.Kind.PAYLOAD, left.result(), left.missing()));
    if (trip.bags().value().signum() > 0) {
      checks.add(limit(Check.Kind.BAGGAGE, Figure.BAGGAGE_LIMIT, trip.bags()));
    }
    Integer people = trip.people();
    if (people != null) {
      checks.add(limit(Check.Kind.SEATS, Figure.SEATS, Amount.exactly("" + people, Scale.COUNT)));
    }
  }

  Build build() {
    return build;
  }

  /** The fuel needed, reserve included. */
  Worked fuel() {
    return fuel;
  }

  /** What is left of the useful load with the fuel, the people and the bags aboard. */
  Worked left() {
    return left;
  }

  /** All that the trip asks. */
  List<Check> checks() {
    return List.copyOf(checks);
  }

  Outcome outcome() {
    return Outcome.all(checks.stream().map(Check::outcome).toList());
  }

  private interface Steps {
    List<Step> make();
  }

  private Worked work(List<Figure> needs, Steps steps) {
    List<Figure> missing = build.missing(needs);
    return missing.isEmpty() ? Worked.of(steps.make()) : Worked.without(missing);
  }

  private List<Step> fuelSteps() {
    Interval distance = Interval.of(trip.distance());
    Interval speed = arithmetic.figure(Figure.CRUISE_SPEED);
    Interval flow = arithmetic.figure(Figure.FUEL_FLOW);
    Interval reserve = Interval.of(trip.reserve());
    Interval time = distance.over(speed, Scale.H);
    Interval all = time.plus(reserve);
    return List.of(
        new Step(
            "time",
            List.of(first("distance", distance), over(Figure.CRUISE_SPEED.key(), speed)),
            time),
        new Step("time-and-reserve", List.of(first("time", time), plus("reserve", reserve)), all),
        new Step(
            "fuel",
            List.of(first("time-and-reserve", all), times(Figure.FUEL_FLOW.key(), flow)),
            all.times(flow, Scale.GAL)));
  }

  private List<Step> payloadSteps() {
    List<Step> steps = new ArrayList<>();
    Step load = arithmetic.usefulLoad();
    Step weight = arithmetic.weight("fuel-weight", "fuel", fuel.found().orElseThrow());
    Interval payload = load.result().minus(weight.result());
    steps.add(load);
    steps.add(weight);
    steps.add(
        new Step(
            "payload",
            List.of(first(load.name(), load.result()), minus(weight.name(), weight.result())),
            payload));
    steps.add(leftOver(payload));
    return steps;
  }

  private Step leftOver(Interval payload) {
    Interval people = Interval.of(trip.peopleWeight());
    Interval bags = Interval.of(trip.bags());
    return new Step(
        "left",
        List.of(first("payload", payload), minus("people", people), minus("bags", bags)),
        payload.minus(people).minus(bags));
  }

  private Check fuelCheck() {
    List<Figure> missing =
        build.missing(List.of(Figure.USABLE_FUEL, Figure.CRUISE_SPEED, Figure.FUEL_FLOW));
    return missing.isEmpty()
        ? new Check(
            Check.Kind.FUEL,
            arithmetic.figure(Figure.USABLE_FUEL).minus(fuel.found().orElseThrow()),
            missing)
        : new Check(Check.Kind.FUEL, null, missing);
  }

  private Check limit(Check.Kind kind, Figure figure, Amount asked) {
    List<Figure> missing = build.missing(List.of(figure));
    return missing.isEmpty()
        ? new Check(kind, arithmetic.figure(figure).minus(Interval.of(asked)), missing)
        : new Check(kind, null, missing);
  }

  /** What is left over at worst, by which variants are ranked; empty where it cannot be told. */
  Optional<BigDecimal> rank() {
    return left.found().map(l -> l.low().value());
  }
}
