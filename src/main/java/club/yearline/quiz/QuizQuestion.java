package club.yearline.quiz;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * A question with its options, one of which is right.
 *
 * @param kind what it asks
 * @param options what each option claims, in the order shown
 * @param right the place of the right one
 */
record QuizQuestion(Kind kind, List<Claim> options, int right) {

  static final int FEWEST = 2;
  static final int MOST = 5;

  QuizQuestion {
    options = List.copyOf(options);
  }

  /**
   * The question with these options, if it is one: the engine proves one of them and disproves all
   * others, and no two read the same.
   */
  static Optional<QuizQuestion> of(Kind kind, List<Claim> options, Judge judge) {
    if (options.size() < FEWEST || options.size() > MOST) {
      return Optional.empty();
    }
    int right = -1;
    Set<String> labels = new TreeSet<>();
    for (int i = 0; i < options.size(); i++) {
      Verdict verdict = judge.verdict(options.get(i));
      boolean second = verdict == Verdict.HOLDS && right >= 0;
      if (verdict == Verdict.UNPROVEN || second || !labels.add(Labels.of(options.get(i)))) {
        return Optional.empty();
      }
      right = verdict == Verdict.HOLDS ? i : right;
    }
    return right < 0 ? Optional.empty() : Optional.of(new QuizQuestion(kind, options, right));
  }

  /** The right option. */
  Claim answer() {
    return options.get(right);
  }
}
