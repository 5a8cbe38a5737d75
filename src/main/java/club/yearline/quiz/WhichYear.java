package club.yearline.quiz;

import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Timeline;
import club.yearline.effectivity.VariantModel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Which year left the factory with this: neighbouring years and siblings without it beside it. */
final class WhichYear implements Maker {

  private static final int WRONG = 3;

  /** How many of the nearest years wrong ones are taken from. */
  private static final int NEAREST = 6;

  private final Ground ground;
  private final Draws draws;

  WhichYear(Ground ground, Draws draws) {
    this.ground = ground;
    this.draws = draws;
  }

  @Override
  public List<Subject> subjects() {
    List<Subject> subjects = new ArrayList<>();
    for (VariantModel model : ground.models()) {
      for (Timeline timeline : ground.timelines(model)) {
        Feature feature = timeline.feature();
        for (String value : ground.offered(timeline)) {
          subjects.add(new Subject(feature.key(), () -> question(model, feature, value)));
        }
      }
    }
    return draws.shuffled(subjects);
  }

  private Optional<QuizQuestion> question(VariantModel model, Feature feature, String value) {
    List<Position> with = judged(ground.years(model), feature, value, Verdict.HOLDS);
    if (with.isEmpty()) {
      return Optional.empty();
    }
    Position right = draws.pick(with);
    List<Position> without =
        judged(ground.years(feature), feature, value, Verdict.FAILS).stream()
            .sorted(
                Comparator.comparingInt((Position p) -> Math.abs(year(p) - year(right)))
                    .thenComparing(p -> !p.variant().key().equals(right.variant().key())))
            .limit(NEAREST)
            .toList();
    List<Position> shown = new ArrayList<>(draws.some(without, WRONG));
    shown.add(right);
    shown.sort(
        Comparator.comparingInt(WhichYear::year).thenComparing(p -> p.variant().designation()));
    return QuizQuestion.of(
        Kind.WHICH_YEAR,
        shown.stream().<Claim>map(p -> new Claim.Has(p, feature, value)).toList(),
        ground.judge());
  }

  private List<Position> judged(
      List<Position> years, Feature feature, String value, Verdict verdict) {
    return years.stream()
        .filter(p -> ground.judge().verdict(new Claim.Has(p, feature, value)) == verdict)
        .toList();
  }

  private static int year(Position at) {
    return Objects.requireNonNull(at.year());
  }
}
