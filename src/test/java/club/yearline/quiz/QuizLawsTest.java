package club.yearline.quiz;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Family;
import club.yearline.effectivity.Records;
import club.yearline.testing.Dice;
import club.yearline.testing.Seeds;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What holds for every quiz, on random catalogues. */
class QuizLawsTest {

  private static final int CATALOGUES = 500;

  private static final int PRODUCTIONS = 1000;

  /** Two quizzes of each family of each catalogue: some two thousand. */
  @Test
  void everyQuestionHasExactlyOneRightAnswerByTheEngineHoweverOddTheRecords() {
    Seeds.check(CATALOGUES, (records, dice) -> check(records, dice, new EnumMap<>(Kind.class)));
  }

  /** Another two thousand, in which every kind of question is asked. */
  @Test
  void everyQuestionOfEveryKindHasExactlyOneRightAnswerByTheEngine() {
    Map<Kind, Integer> made = new EnumMap<>(Kind.class);
    for (long seed = 0; seed < PRODUCTIONS; seed++) {
      Dice dice = new Dice(seed);
      check(Production.random(dice), dice, made);
    }
    // A law that is never put to the test proves nothing.
    assertThat(made).containsOnlyKeys(Kind.values());
    assertThat(made.values()).allMatch(n -> n >= 1000, "a thousand of each kind: " + made);
  }

  private static void check(Records records, Dice dice, Map<Kind, Integer> made) {
    Catalogue catalogue = Catalogue.of(records);
    Referee referee = new Referee(catalogue);
    for (Family family : records.families()) {
      for (int i = 0; i < 2; i++) {
        Quiz quiz = Quiz.of(catalogue, all(family, dice.between(0, 999_999_999)));
        quiz.questions().forEach(q -> made.merge(q.kind(), 1, Integer::sum));
        quiz.questions().forEach(q -> assertOneRight(q, referee));
      }
    }
  }

  static void assertOneRight(QuizQuestion question, Referee referee) {
    assertThat(question.options()).hasSizeBetween(2, 5);
    assertThat(question.options().stream().map(Labels::of)).doesNotHaveDuplicates();
    for (int i = 0; i < question.options().size(); i++) {
      Claim claim = question.options().get(i);
      boolean right = i == question.right();
      assertThat(referee.proves(claim)).as("%s %s", question, claim).isEqualTo(right);
      assertThat(referee.disproves(claim)).as("%s %s", question, claim).isNotEqualTo(right);
    }
  }

  @Test
  void aNumberGivesTheSameQuizAgainInWhateverOrderTheRecordsStand() {
    Seeds.check(
        200,
        (records, dice) -> {
          Family family = records.families().get(0);
          Selection selection = all(family, dice.between(0, 999_999_999));
          List<Entry> entries = new ArrayList<>(records.entries());
          Collections.shuffle(entries, new Random(selection.number()));
          Records other = Records.of(entries, records.pictures());
          assertThat(Quiz.of(Catalogue.of(other), selection))
              .isEqualTo(Quiz.of(Catalogue.of(records), selection));
        });
  }

  @Test
  void anotherNumberUsuallyGivesAnotherQuiz() {
    int same = 0;
    int compared = 0;
    for (long seed = 0; seed < 100; seed++) {
      Records records = Production.random(new Dice(seed));
      Catalogue catalogue = Catalogue.of(records);
      Family family = records.families().get(0);
      Quiz one = Quiz.of(catalogue, all(family, 1));
      if (one.questions().size() >= 5) {
        compared++;
        same += one.equals(Quiz.of(catalogue, all(family, 2))) ? 1 : 0;
      }
    }
    assertThat(compared).isGreaterThan(50);
    assertThat(same).isLessThan(compared / 10);
  }

  /** The JDK's documented SplittableRandom is SplitMix64 as well. */
  @Test
  void drawsAreThoseOfSplitMix64() {
    for (long number : new long[] {0, 1, 4711, 999_999_999, -1}) {
      Draws draws = new Draws(number);
      SplittableRandom other = new SplittableRandom(number);
      for (int i = 0; i < 100; i++) {
        assertThat(draws.next()).isEqualTo(other.nextLong());
      }
    }
  }

  private static Selection all(Family family, long number) {
    return new Selection(family.key(), List.of(), List.of(), List.of(), List.of(), 12, number);
  }
}
