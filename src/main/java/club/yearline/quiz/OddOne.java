package club.yearline.quiz;

import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Position;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Which of four does not belong: three left the factory with the same, one with another. */
final class OddOne implements Maker {

  private static final int ALIKE = 3;

  private static final Comparator<Position> SHOWN =
      Comparator.comparing((Position p) -> p.variant().designation())
          .thenComparing(p -> String.valueOf(p.year()));

  private final Ground ground;
  private final Draws draws;

  OddOne(Ground ground, Draws draws) {
    this.ground = ground;
    this.draws = draws;
  }

  @Override
  public List<Subject> subjects() {
    List<Subject> subjects = new ArrayList<>();
    for (Feature feature : ground.features()) {
      Map<String, List<Position>> byValue = byValue(feature);
      for (String value : byValue.keySet()) {
        subjects.add(new Subject(feature.key(), () -> question(feature, value, byValue)));
      }
    }
    return draws.shuffled(subjects);
  }

  private Map<String, List<Position>> byValue(Feature feature) {
    Map<String, List<Position>> byValue = new TreeMap<>();
    for (Position year : ground.years(feature)) {
      Fact fact = ground.judge().fact(year, feature);
      if (fact.isOnly()) {
        byValue.computeIfAbsent(fact.value(), k -> new ArrayList<>()).add(year);
      }
    }
    return byValue;
  }

  private Optional<QuizQuestion> question(
      Feature feature, String value, Map<String, List<Position>> byValue) {
    List<Position> alike = byValue.getOrDefault(value, List.of());
    List<Position> others = new ArrayList<>();
    byValue.forEach(
        (other, years) -> {
          if (!other.equals(value)) {
            others.addAll(years);
          }
        });
    if (alike.size() < ALIKE || others.isEmpty()) {
      return Optional.empty();
    }
    List<Position> shown = new ArrayList<>(draws.some(alike, ALIKE));
    shown.add(draws.pick(others));
    shown.sort(SHOWN);
    return QuizQuestion.of(Kind.ODD_ONE, Claim.Odd.each(feature, shown), ground.judge());
  }
}
