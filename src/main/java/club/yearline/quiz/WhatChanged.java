package club.yearline.quiz;

import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Position;
import club.yearline.effectivity.Timeline;
import club.yearline.effectivity.VariantModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What changed between two years: beside it, what changed in others, and what did not come. */
final class WhatChanged implements Maker {

  private static final int WRONG = 3;

  /** A change is looked for between years at most so far apart. */
  private static final int FARTHEST = 3;

  private final Ground ground;
  private final Draws draws;

  WhatChanged(Ground ground, Draws draws) {
    this.ground = ground;
    this.draws = draws;
  }

  @Override
  public List<Subject> subjects() {
    List<Subject> subjects = new ArrayList<>();
    for (VariantModel model : ground.models()) {
      List<Timeline> timelines = ground.timelines(model);
      List<Position> years = ground.years(model);
      for (Timeline timeline : timelines) {
        for (int i = 0; i + 1 < years.size(); i++) {
          int at = i;
          Feature feature = timeline.feature();
          subjects.add(new Subject(feature.key(), () -> question(feature, years, at, timelines)));
        }
      }
    }
    return draws.shuffled(subjects);
  }

  private Optional<QuizQuestion> question(
      Feature feature, List<Position> years, int at, List<Timeline> timelines) {
    Position before = years.get(at);
    for (int later = at + 1; later < Math.min(years.size(), at + 1 + FARTHEST); later++) {
      Position after = years.get(later);
      Fact old = ground.judge().fact(before, feature);
      Fact now = ground.judge().fact(after, feature);
      if (old.isOnly() && now.isOnly()) {
        return old.value().equals(now.value())
            ? Optional.empty()
            : question(
                new Claim.Became(before, after, feature, old.value(), now.value()), timelines);
      }
    }
    return Optional.empty();
  }

  private Optional<QuizQuestion> question(Claim.Became right, List<Timeline> timelines) {
    List<Claim> wrong = new ArrayList<>();
    for (Timeline timeline : draws.shuffled(timelines)) {
      if (!timeline.feature().key().equals(right.feature().key()) && wrong.size() < WRONG) {
        wrong(right, timeline).ifPresent(wrong::add);
      }
    }
    if (wrong.isEmpty()) {
      wrong.add(
          new Claim.Became(
              right.before(), right.after(), right.feature(), right.to(), right.from()));
    }
    wrong.add(right);
    return QuizQuestion.of(Kind.WHAT_CHANGED, draws.shuffled(wrong), ground.judge());
  }

  /** Two values that followed each other, or could have, but not between these years. */
  private Optional<Claim> wrong(Claim.Became right, Timeline timeline) {
    Feature feature = timeline.feature();
    List<String> offered = ground.offered(timeline);
    List<String> values = offered.size() > 1 ? offered : ground.values(feature);
    for (int i = 0; i + 1 < values.size(); i++) {
      Claim claim =
          new Claim.Became(
              right.before(), right.after(), feature, values.get(i), values.get(i + 1));
      if (ground.judge().verdict(claim) == Verdict.FAILS) {
        return Optional.of(claim);
      }
    }
    return Optional.empty();
  }
}
