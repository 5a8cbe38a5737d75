package club.yearline.expected;

import club.yearline.citation.Grade;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.State;
import club.yearline.web.Phrases;
import java.util.EnumMap;
import java.util.Map;

/** The words and classes of the marks, looked up once for a page that repeats them. */
final class Marks {

  private final Map<State, String> states = new EnumMap<>(State.class);
  private final Map<Fit, String> fits = new EnumMap<>(Fit.class);
  private final Map<Grade, String> grades = new EnumMap<>(Grade.class);

  Marks(Phrases phrases) {
    for (State state : State.values()) {
      states.put(state, phrases.of("mark.state." + state.code()));
    }
    for (Fit fit : Fit.values()) {
      fits.put(fit, phrases.of("mark.fit." + fit.code()));
    }
    for (Grade grade : Grade.values()) {
      grades.put(grade, phrases.of("mark.grade", phrases.of("mark.grade." + grade.code())));
    }
  }

  String word(State state) {
    return states.getOrDefault(state, "");
  }

  String word(Fit fit) {
    return fits.getOrDefault(fit, "");
  }

  String word(Grade grade) {
    return grades.getOrDefault(grade, "");
  }

  static String style(State state) {
    return "mark is-" + state.code();
  }

  static String style(Fit fit) {
    return "mark is-" + fit.code();
  }

  static String style(Grade grade) {
    return "mark grade of-" + grade.code();
  }
}
