package club.yearline.compare;

import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.VariantModel;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One of the variant-years that are compared.
 *
 * @param position the variant and year
 * @param answers by figure, as far as the variant has the features
 * @param builds the airframes that are alike in all figures; more than one where the year splits
 */
record Column(Position position, Map<Figure, Answer> answers, List<Build> builds) {

  Column {
    builds = List.copyOf(builds);
  }

  static Column of(Catalogue catalogue, Position position) {
    VariantModel model = catalogue.model(position.variant().key()).orElseThrow();
    Map<Figure, Answer> answers = new EnumMap<>(Figure.class);
    for (Answer answer : model.expected(position)) {
      Figure.of(answer.feature().key()).ifPresent(f -> answers.put(f, answer));
    }
    return new Column(position, answers, new Builds(catalogue).of(model.family(), answers));
  }

  /** What the engine answers for a figure; null where the variant has no such feature. */
  @Nullable Answer answer(Figure figure) {
    return answers.get(figure);
  }

  /** The range over all builds; empty where any of them has none. */
  Optional<Interval> range(Figure figure) {
    return around(builds.stream().map(b -> b.figure(figure)).toList());
  }

  /** The range of a derived figure over all builds; empty where any of them has none. */
  Optional<Interval> range(Derived derived, Amount reserve) {
    return around(
        builds.stream().map(b -> new Arithmetic(b, reserve).of(derived).found()).toList());
  }

  private static Optional<Interval> around(List<Optional<Interval>> all) {
    return all.stream().allMatch(Optional::isPresent)
        ? all.stream().map(Optional::get).reduce(Interval::around)
        : Optional.empty();
  }

  /** Whether both have the same of the given figures, whatever the serials. */
  boolean saysSame(Column other, List<Figure> of) {
    if (builds.size() != other.builds.size()) {
      return false;
    }
    for (int i = 0; i < builds.size(); i++) {
      if (!builds.get(i).saysSame(other.builds.get(i), of)) {
        return false;
      }
    }
    return true;
  }
}
