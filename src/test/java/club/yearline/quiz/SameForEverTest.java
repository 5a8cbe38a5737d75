package club.yearline.quiz;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.effectivity.Catalogue;
import club.yearline.testing.Sample;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * One quiz, written down: quizzes are on paper, and their keys in drawers. Whoever must change what
 * stands here changes every quiz there ever was.
 */
class SameForEverTest {

  @Test
  void theQuizOfANumberIsWhatItAlwaysWas() {
    Quiz quiz =
        Quiz.of(
            Catalogue.of(Sample.records(Sample.turnstone())),
            new Selection("turnstone", List.of(), List.of(), List.of(), List.of(), 8, 4711));
    assertThat(quiz.questions().stream().map(SameForEverTest::line))
        .containsExactly(
            "which-year [Variant la-2b 1964, Variant la-2b 1965, Variant la-2b 1967] 2",
            "what-changed [Feature door-latch: the rotary, "
                + "the sliding, Feature door-latch: the sliding, the rotary] 1",
            "odd-one [Variant la-2b 1965, Variant la-2b 1966, "
                + "Variant la-2b 1967, Variant la-2b 1968] 0",
            "serial [the sliding, the rotary] 1",
            "true-or-doubtful [the sliding, mixes, lacks] 2",
            "which-year [Variant la-2b 1964, Variant la-2b 1966, "
                + "Variant la-2b 1967, Variant la-2b 1968] 0",
            "serial [the rotary, the sliding] 1",
            "true-or-doubtful [the sliding, mixes, lacks] 2");
  }

  private static String line(QuizQuestion question) {
    return question.kind().code()
        + " "
        + question.options().stream().map(Labels::of).toList()
        + " "
        + question.right();
  }
}
