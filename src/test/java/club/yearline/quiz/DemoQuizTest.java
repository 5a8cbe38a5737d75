package club.yearline.quiz;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.effectivity.Catalogue;
import club.yearline.exchange.DemoRecords;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Quizzes from the demo, as a class would take them. */
class DemoQuizTest {

  private static final Catalogue DEMO = Catalogue.of(DemoRecords.read());

  @ParameterizedTest
  @ValueSource(strings = {"turnstone", "whimbrel", "dotterel"})
  void everyQuestionHasExactlyOneRightAnswer(String family) {
    Referee referee = new Referee(DEMO);
    for (long number = 0; number < 20; number++) {
      Quiz.of(DEMO, quiz(family, List.of(), number))
          .questions()
          .forEach(q -> QuizLawsTest.assertOneRight(q, referee));
    }
  }

  @ParameterizedTest
  @EnumSource
  void theTurnstoneBearsTenQuestionsOfEachKind(Kind kind) {
    Quiz quiz = Quiz.of(DEMO, quiz("turnstone", List.of(kind), 4711));
    assertThat(quiz.questions()).hasSize(10).allMatch(q -> q.kind() == kind);
  }

  @Test
  void aTransitionIsAnAnswerNowAndThen() {
    Set<Kind> kinds = new HashSet<>();
    for (long number = 0; number < 60; number++) {
      Quiz.of(DEMO, quiz("turnstone", List.of(), number)).questions().stream()
          .filter(q -> q.answer() instanceof Claim.Mixes)
          .forEach(q -> kinds.add(q.kind()));
    }
    assertThat(kinds).containsExactlyInAnyOrder(Kind.SERIAL, Kind.TRUE_OR_DOUBTFUL);
  }

  @Test
  void otherNumbersGiveOtherQuizzes() {
    Set<Quiz> quizzes = new HashSet<>();
    for (long number = 0; number < 40; number++) {
      quizzes.add(Quiz.of(DEMO, quiz("turnstone", List.of(), number)));
    }
    assertThat(quizzes).hasSize(40);
  }

  private static Selection quiz(String family, List<Kind> kinds, long number) {
    return new Selection(family, List.of(), List.of(), List.of(), kinds, 10, number);
  }
}
