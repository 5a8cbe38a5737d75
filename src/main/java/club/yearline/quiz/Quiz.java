package club.yearline.quiz;

import club.yearline.effectivity.Catalogue;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A quiz: a function of the catalogue's state, the choice and its number, and of nothing else.
 *
 * @param questions the questions, fewer than asked for where the records bear no more
 */
record Quiz(List<QuizQuestion> questions) {

  /** More attempts would keep a reader waiting. */
  private static final int MOST_TRIES = 20_000;

  Quiz {
    questions = List.copyOf(questions);
  }

  /** Makes the quiz of a choice. */
  static Quiz of(Catalogue catalogue, Selection selection) {
    Draws draws = new Draws(selection.number());
    return new Making(new Ground(catalogue, selection), selection, draws).quiz();
  }

  /** Takes kinds in turns, and features that were not asked about before those that were. */
  private static final class Making {
    private final Selection selection;
    private final Map<Kind, Deque<Subject>> fresh = new LinkedHashMap<>();
    private final Map<Kind, Deque<Subject>> again = new LinkedHashMap<>();
    private final Set<String> asked = new HashSet<>();
    private int tries;

    Making(Ground ground, Selection selection, Draws draws) {
      this.selection = selection;
      for (Kind kind : draws.shuffled(selection.meant())) {
        fresh.put(kind, new ArrayDeque<>(Maker.of(kind, ground, draws).subjects()));
        again.put(kind, new ArrayDeque<>());
      }
    }

    Quiz quiz() {
      List<QuizQuestion> questions = new ArrayList<>();
      List<Kind> open = new ArrayList<>(fresh.keySet());
      while (!open.isEmpty() && questions.size() < selection.count()) {
        for (Iterator<Kind> kinds = open.iterator(); kinds.hasNext(); ) {
          Optional<QuizQuestion> made = next(kinds.next());
          if (made.isEmpty()) {
            kinds.remove();
          } else if (questions.size() < selection.count()) {
            questions.add(made.get());
          }
        }
      }
      return new Quiz(questions);
    }

    private Optional<QuizQuestion> next(Kind kind) {
      Optional<QuizQuestion> made = first(fresh(kind), again(kind));
      return made.isPresent() ? made : first(again(kind), null);
    }

    private Deque<Subject> fresh(Kind kind) {
      return Objects.requireNonNull(fresh.get(kind));
    }

    private Deque<Subject> again(Kind kind) {
      return Objects.requireNonNull(again.get(kind));
    }

    private Optional<QuizQuestion> first(Deque<Subject> from, @Nullable Deque<Subject> putOff) {
      while (!from.isEmpty() && tries < MOST_TRIES) {
        Subject subject = from.removeFirst();
        if (putOff != null && asked.contains(subject.feature())) {
          putOff.addLast(subject);
          continue;
        }
        tries++;
        Optional<QuizQuestion> made = subject.question().get();
        if (made.isPresent()) {
          asked.add(subject.feature());
          return made;
        }
      }
      return Optional.empty();
    }
  }
}
