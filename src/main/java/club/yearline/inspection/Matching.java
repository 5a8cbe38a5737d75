package club.yearline.inspection;

import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Fit;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.Possible;
import club.yearline.effectivity.State;
import club.yearline.effectivity.Values;
import club.yearline.spotting.Seen;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Looks an observation up among the offerings that are possible. */
final class Matching {

  private static final Possible NOTHING = new Possible(null, null, false);

  private Matching() {}

  /**
   * How an observation stands to an answer.
   *
   * @param answer null where the feature is none of the variant's
   * @param retrofitted whether the value is recorded as a retrofit for the position
   */
  static Match of(Seen seen, @Nullable Answer answer, boolean retrofitted) {
    List<Possible> possible = answer == null ? List.of(NOTHING) : possible(answer);
    long holding = possible.stream().filter(p -> offers(seen, p).findAny().isPresent()).count();
    if (holding == 0) {
      boolean unknown = possible.stream().anyMatch(Possible::isNothing);
      return retrofitted ? Match.RETROFIT : unknown ? Match.NOT_RECORDED : Match.DIFFERS;
    }
    if (holding < possible.size()) {
      return Match.EITHER;
    }
    boolean standard =
        possible.stream().allMatch(p -> offers(seen, p).anyMatch(o -> o.fit() == Fit.STANDARD));
    return standard ? Match.AS_BUILT : Match.AS_BUILT_OPTION;
  }

  /** Each offering possible, "nothing recorded" included; of a split, those of each stretch. */
  private static List<Possible> possible(Answer answer) {
    if (answer.state() == State.SPLITS) {
      return answer.stretches().stream().flatMap(s -> possible(s.answer()).stream()).toList();
    }
    return answer.state() == State.UNRECORDED ? List.of(NOTHING) : answer.possible();
  }

  private static Stream<Offered> offers(Seen seen, Possible possible) {
    return possible.offering().stream().filter(o -> shows(seen, o.value()));
  }

  /** Whether the value seen is the recorded one; numbers are equal by value. */
  static boolean shows(Seen seen, String recorded) {
    return seen.value().equals(seen.feature().isNumber() ? Values.canonical(recorded) : recorded);
  }
}
