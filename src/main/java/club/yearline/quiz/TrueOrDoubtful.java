package club.yearline.quiz;

import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Timeline;
import club.yearline.effectivity.VariantModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A statement that is true, doubtful for a transition, or false. */
final class TrueOrDoubtful implements Maker {

  private final Ground ground;
  private final Draws draws;

  TrueOrDoubtful(Ground ground, Draws draws) {
    this.ground = ground;
    this.draws = draws;
  }

  @Override
  public List<Subject> subjects() {
    List<Subject> settled = new ArrayList<>();
    List<Subject> mixed = new ArrayList<>();
    for (VariantModel model : ground.models()) {
      for (Timeline timeline : ground.timelines(model)) {
        Feature feature = timeline.feature();
        for (Position year : ground.years(model)) {
          Fact fact = ground.judge().fact(year, feature);
          List<Subject> of = fact.isTransition() ? mixed : settled;
          if (fact.isTransition() || fact.isOnly()) {
            of.add(new Subject(feature.key(), () -> question(year, feature, fact)));
          }
        }
      }
    }
    return Maker.mingled(draws.shuffled(settled), draws.shuffled(mixed));
  }

  private Optional<QuizQuestion> question(Position at, Feature feature, Fact fact) {
    List<String> values = new ArrayList<>(ground.values(feature));
    boolean named = fact.isTransition() || draws.below(2) == 0;
    values.removeIf(v -> fact.values().contains(v) != named);
    if (values.isEmpty()) {
      return Optional.empty();
    }
    String value = draws.pick(values);
    return QuizQuestion.of(
        Kind.TRUE_OR_DOUBTFUL,
        List.of(
            new Claim.Settles(at, feature, value),
            new Claim.Mixes(at, feature),
            new Claim.Lacks(at, feature, value)),
        ground.judge());
  }
}
