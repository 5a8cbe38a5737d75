package club.yearline.compare;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.testing.Dice;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/**
 * Laws on random builds and trips. A failure names its seed; {@code -Dyearline.seed} replays it.
 */
class CompareLawsTest {

  private static final int SEEDS = 400;
  private static final BigDecimal TRACE = new BigDecimal("1e-9");
  private static final Map<Scale, Scale> METRIC =
      new EnumMap<>(
          Map.of(
              Scale.LB,
              Scale.KG,
              Scale.GAL,
              Scale.L,
              Scale.KT,
              Scale.KM_H,
              Scale.GAL_H,
              Scale.L_H));

  private interface Law {
    void check(Build build, Trip trip, Dice dice);
  }

  private static void always(Law law) {
    Long replay = Long.getLong("yearline.seed");
    LongStream seeds = replay == null ? LongStream.range(0, SEEDS) : LongStream.of(replay);
    seeds.forEach(
        seed -> {
          Dice dice = new Dice(seed);
          try {
            law.check(figures(dice).build(), trip(dice), dice);
          } catch (RuntimeException | AssertionError e) {
            throw new AssertionError("Replay with -Dyearline.seed=" + seed, e);
          }
        });
  }

  private static Figures figures(Dice dice) {
    Figures figures = Figures.none();
    between(figures, dice, Figure.GROSS_WEIGHT, 1500, 4000);
    between(figures, dice, Figure.EMPTY_WEIGHT, 900, 2600);
    between(figures, dice, Figure.USABLE_FUEL, 20, 90);
    between(figures, dice, Figure.CRUISE_SPEED, 70, 180);
    between(figures, dice, Figure.FUEL_FLOW, 4, 22);
    between(figures, dice, Figure.BAGGAGE_LIMIT, 50, 250);
    between(figures, dice, Figure.SEATS, 2, 6);
    return figures;
  }

  private static void between(Figures figures, Dice dice, Figure figure, int low, int high) {
    if (dice.chance(0.05)) {
      return;
    }
    String one = "" + dice.between(low, high);
    if (dice.chance(0.2)) {
      figures.with(figure, one, "" + dice.between(low, high));
    } else {
      figures.with(figure, one);
    }
  }

  private static Trip trip(Dice dice) {
    return new Trip(
        Amount.exactly("" + dice.between(1, 900), Scale.NMI),
        Amount.exactly("" + dice.between(0, 90), Scale.MINUTE).in(Scale.H),
        dice.maybe(0.8, dice.between(1, 6)),
        Amount.exactly("" + dice.between(0, 900), Scale.LB),
        Amount.exactly("" + dice.between(0, 250), Scale.LB));
  }

  private static Trip with(Trip trip, Amount distance, Amount bags) {
    return new Trip(distance, trip.reserve(), trip.people(), trip.peopleWeight(), bags);
  }

  @Test
  void moreDistanceNeverLeavesMorePayloadAndNeverTakesLessFuel() {
    always(
        (build, trip, dice) -> {
          Amount further =
              trip.distance().plus(Amount.exactly("" + dice.between(1, 50), Scale.NMI));
          Flight near = new Flight(build, trip);
          Flight far = new Flight(build, with(trip, further, trip.bags()));
          assertThat(far.left().found().isPresent()).isEqualTo(near.left().found().isPresent());
          if (near.left().found().isPresent()) {
            Interval before = near.left().found().get();
            Interval after = far.left().found().get();
            assertThat(after.low().compare(before.low())).isNegative();
            assertThat(after.high().compare(before.high())).isNegative();
          }
        });
  }

  @Test
  void aHeavierLoadNeverTurnsCannotIntoCan() {
    always(
        (build, trip, dice) -> {
          Amount more = trip.bags().plus(Amount.exactly("" + dice.between(1, 100), Scale.LB));
          Outcome light = new Flight(build, trip).outcome();
          Outcome heavy = new Flight(build, with(trip, trip.distance(), more)).outcome();
          if (light == Outcome.CANNOT) {
            assertThat(heavy).isEqualTo(Outcome.CANNOT);
          }
          if (heavy == Outcome.CAN) {
            assertThat(light).isEqualTo(Outcome.CAN);
          }
        });
  }

  @Test
  void figuresAndTripInOtherUnitsGiveTheSameVerdict() {
    always(
        (build, trip, dice) -> {
          Trip metric =
              new Trip(
                  thereAndBack(trip.distance(), Scale.KM),
                  trip.reserve(),
                  trip.people(),
                  thereAndBack(trip.peopleWeight(), Scale.KG),
                  thereAndBack(trip.bags(), Scale.KG));
          Flight ours = new Flight(build, trip);
          Flight theirs = new Flight(metric(build), metric);
          assertThat(theirs.outcome()).isEqualTo(ours.outcome());
          assertThat(theirs.checks().stream().map(Check::outcome))
              .containsExactlyElementsOf(ours.checks().stream().map(Check::outcome).toList());
        });
  }

  /** What somebody types who has converted it exactly. */
  private static Amount thereAndBack(Amount amount, Scale metric) {
    BigDecimal typed = amount.scale().convert(amount.value(), metric);
    return new Amount(metric.convert(typed, amount.scale()), amount.scale(), Amount.EXACT);
  }

  private static Build metric(Build build) {
    Figures figures = Figures.none();
    for (Figure figure : Figure.ALL) {
      Recorded recorded = build.recorded(figure);
      if (recorded.missing() == null) {
        Scale scale = METRIC.getOrDefault(figure.scale(), figure.scale());
        figures.with(
            figure,
            scale,
            recorded.values().stream()
                .map(v -> figure.scale().convert(v.amount().value(), scale).toPlainString())
                .toArray(String[]::new));
      }
    }
    return figures.build();
  }

  @Test
  void eachPossibleValueLiesWithinTheRange() {
    always(
        (build, trip, dice) -> {
          Flight range = new Flight(build, trip);
          Flight one = new Flight(picked(build, dice), trip);
          if (range.left().found().isEmpty()) {
            assertThat(one.left().found()).isEmpty();
            return;
          }
          Interval whole = range.left().found().get();
          Interval single = one.left().found().orElseThrow();
          assertThat(whole.low().value().subtract(TRACE)).isLessThanOrEqualTo(single.low().value());
          assertThat(whole.high().value().add(TRACE)).isGreaterThanOrEqualTo(single.high().value());
          if (range.outcome() == Outcome.CAN || range.outcome() == Outcome.CANNOT) {
            assertThat(one.outcome()).isEqualTo(range.outcome());
          }
        });
  }

  private static Build picked(Build build, Dice dice) {
    Figures figures = Figures.none();
    for (Figure figure : Figure.ALL) {
      Recorded recorded = build.recorded(figure);
      if (recorded.missing() == null) {
        List<Recorded.Value> values = recorded.values();
        figures.with(figure, dice.pick(values).amount().value().toPlainString());
      }
    }
    return figures.build();
  }

  @Test
  void fullTanksNeverCarryMoreThanTheTripThatEmptiesThem() {
    always(
        (build, trip, dice) -> {
          Arithmetic arithmetic = new Arithmetic(build, trip.reserve());
          Worked range = arithmetic.of(Derived.RANGE);
          Worked full = arithmetic.of(Derived.PAYLOAD_FULL_FUEL);
          if (range.found().isEmpty() || full.found().isEmpty()) {
            return;
          }
          Build one = picked(build, dice);
          Arithmetic single = new Arithmetic(one, trip.reserve());
          Interval far = single.of(Derived.RANGE).found().orElseThrow();
          if (far.low().value().signum() > 0) {
            Trip whole =
                new Trip(
                    far.low(), trip.reserve(), null, Amount.none(Scale.LB), Amount.none(Scale.LB));
            Flight flight = new Flight(one, whole);
            BigDecimal left = flight.left().found().orElseThrow().low().value();
            BigDecimal payload =
                single.of(Derived.PAYLOAD_FULL_FUEL).found().orElseThrow().low().value();
            assertThat(left).isCloseTo(payload, org.assertj.core.api.Assertions.within(TRACE));
            assertThat(flight.checks().get(0).outcome()).isEqualTo(Outcome.CAN);
          }
        });
  }
}
