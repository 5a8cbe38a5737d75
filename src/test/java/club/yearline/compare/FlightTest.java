package club.yearline.compare;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked by hand: 900 lb useful load, 40 gal at 8.0 gal/h and 6.0 lb/gal, 100 kt, half an hour. */
class FlightTest {

  @ParameterizedTest
  @CsvSource({
    // distance, people, their weight, bags; fuel, left, outcome
    "250, 3, 510, 60, 24, 186, CAN",
    "450, 3, 510, 60, 40, 90, CAN",
    "460, 3, 510, 60, 41, 85, CANNOT",
    "250, 4, 700, 60, 24, −4, CANNOT",
    "250, 3, 510, 121, 24, 125, CANNOT",
    "250, 5, 510, 60, 24, 186, CANNOT",
    "250, 4, 636, 120, 24, 0, CAN"
  })
  void isJudged(
      String distance,
      int people,
      String weight,
      String bags,
      String fuel,
      String left,
      Outcome outcome) {
    Flight flight = new Flight(Figures.tourer().build(), trip(distance, people, weight, bags));
    assertThat(flight.fuel().found().orElseThrow().low().number()).isEqualTo(fuel);
    assertThat(flight.left().found().orElseThrow().low().number()).isEqualTo(left);
    assertThat(flight.outcome()).isEqualTo(outcome);
  }

  @Test
  void saysByHowMuchEachThingFallsShort() {
    Flight flight = new Flight(Figures.tourer().build(), trip("500", 5, "800", "150"));
    assertThat(flight.checks())
        .extracting(c -> c.kind() + " " + c.margin().low().text())
        .containsExactly(
            "FUEL −4\u00a0gal", "PAYLOAD −314\u00a0lb", "BAGGAGE −30\u00a0lb", "SEATS −1");
  }

  @Test
  void aFigureThatMayBeEitherMakesItDepend() {
    Build build = Figures.tourer().with(Figure.SEATS, "4", "6").build();
    assertThat(new Flight(build, trip("250", 5, "600", "0")).outcome()).isEqualTo(Outcome.DEPENDS);
    assertThat(new Flight(build, trip("250", 4, "600", "0")).outcome()).isEqualTo(Outcome.CAN);
    assertThat(new Flight(build, trip("250", 7, "600", "0")).outcome()).isEqualTo(Outcome.CANNOT);
  }

  @Test
  void whatIsMissingLeavesItUntoldUnlessSomethingElseDecides() {
    Build build = Figures.tourer().without(Figure.BAGGAGE_LIMIT).build();
    assertThat(new Flight(build, trip("250", 3, "510", "60")).outcome()).isEqualTo(Outcome.UNTOLD);
    assertThat(new Flight(build, trip("250", 3, "510", "0")).outcome()).isEqualTo(Outcome.CAN);
    assertThat(new Flight(build, trip("990", 3, "510", "60")).outcome()).isEqualTo(Outcome.CANNOT);
  }

  @Test
  void withoutASpeedNeitherFuelNorPayloadIsGuessed() {
    Build build = Figures.tourer().without(Figure.CRUISE_SPEED).build();
    Flight flight = new Flight(build, trip("250", 3, "510", "60"));
    assertThat(flight.fuel().missing()).containsExactly(Figure.CRUISE_SPEED);
    assertThat(flight.left().found()).isEmpty();
    assertThat(flight.rank()).isEmpty();
    assertThat(flight.outcome()).isEqualTo(Outcome.UNTOLD);
  }

  private static Trip trip(String distance, int people, String weight, String bags) {
    return new Trip(
        Amount.exactly(distance, Scale.NMI),
        Amount.exactly("0.5", Scale.H),
        people,
        Amount.exactly(weight, Scale.LB),
        Amount.exactly(bags, Scale.LB));
  }
}
