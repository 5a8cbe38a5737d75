package club.yearline.quiz;

import club.yearline.effectivity.Position;
import club.yearline.effectivity.Timeline;
import club.yearline.effectivity.VariantModel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** In which order three things came new on a variant. */
final class Order implements Maker {

  private static final int THINGS = 3;
  private static final int WRONG = 3;
  private static final int[][] OTHER_ORDERS = {
    {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}
  };

  private final Ground ground;
  private final Draws draws;

  Order(Ground ground, Draws draws) {
    this.ground = ground;
    this.draws = draws;
  }

  @Override
  public List<Subject> subjects() {
    List<Subject> subjects = new ArrayList<>();
    for (VariantModel model : ground.models()) {
      List<Claim.Arrival> arrivals = arrivals(model);
      for (Claim.Arrival first : arrivals) {
        subjects.add(new Subject(first.feature().key(), () -> question(first, arrivals)));
      }
    }
    return draws.shuffled(subjects);
  }

  private List<Claim.Arrival> arrivals(VariantModel model) {
    List<Claim.Arrival> arrivals = new ArrayList<>();
    List<Position> years = ground.years(model);
    for (Timeline timeline : ground.timelines(model)) {
      for (String value : ground.offered(timeline)) {
        years.stream()
            .map(y -> new Claim.Arrival(y, timeline.feature(), value))
            .filter(a -> shows(a) != Verdict.FAILS)
            .findFirst()
            .filter(a -> ground.judge().arrives(a))
            .ifPresent(arrivals::add);
      }
    }
    return arrivals;
  }

  private Verdict shows(Claim.Arrival arrival) {
    return ground.judge().fact(arrival.year(), arrival.feature()).shows(arrival.value());
  }

  private Optional<QuizQuestion> question(Claim.Arrival first, List<Claim.Arrival> arrivals) {
    List<Claim.Arrival> things = new ArrayList<>(List.of(first));
    Set<Integer> years = new HashSet<>(List.of(year(first)));
    for (Claim.Arrival other : draws.shuffled(arrivals)) {
      if (things.size() < THINGS && years.add(year(other))) {
        things.add(other);
      }
    }
    if (things.size() < THINGS) {
      return Optional.empty();
    }
    things.sort(Comparator.comparingInt(Order::year));
    List<Claim> options = new ArrayList<>(List.of(new Claim.InOrder(things)));
    for (int[] order : draws.some(List.of(OTHER_ORDERS), WRONG)) {
      options.add(
          new Claim.InOrder(
              List.of(things.get(order[0]), things.get(order[1]), things.get(order[2]))));
    }
    return QuizQuestion.of(Kind.ORDER, draws.shuffled(options), ground.judge());
  }

  private static int year(Claim.Arrival arrival) {
    return Objects.requireNonNull(arrival.year().year());
  }
}
