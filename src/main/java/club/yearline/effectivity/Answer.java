package club.yearline.effectivity;

import java.util.List;

/**
 * What an airframe at a position left the factory with, for one feature, and why.
 *
 * @param feature the feature
 * @param state what is known
 * @param possible each offering possible, oldest first, with the change that brought it; empty for
 *     {@link State#SPLITS} and {@link State#UNRECORDED}
 * @param stretches for {@link State#SPLITS}, the stretches of serials in order; else empty
 * @param evidence what the answer rests on
 * @param retrofits the retrofits recorded for the variant
 */
public record Answer(
    Feature feature,
    State state,
    List<Possible> possible,
    List<Stretch> stretches,
    Evidence evidence,
    List<Retrofit> retrofits) {

  public Answer {
    possible = List.copyOf(possible);
    stretches = List.copyOf(stretches);
    retrofits = List.copyOf(retrofits);
  }

  /** Whether state and possible changes are the same: neighbours that agree are one stretch. */
  boolean agreesWith(Answer other) {
    if (this == other) {
      return true;
    }
    if (state != other.state || possible.size() != other.possible.size()) {
      return false;
    }
    for (int i = 0; i < possible.size(); i++) {
      if (!possible.get(i).sameChange(other.possible.get(i))) {
        return false;
      }
    }
    return stretches.equals(other.stretches);
  }

  /**
   * Whether a reader would call the two answers different: their states or their offerings (values
   * and fits) differ; for splits, the sequences of their stretches' states and offerings.
   */
  public boolean differsFrom(Answer other) {
    if (this == other) {
      return false;
    }
    return state != other.state
        || !offersSame(possible, other.possible)
        || !stretchesSame(other.stretches);
  }

  /** Whether only what the answer rests on differs: grade, dispute or retrofits. */
  public boolean differsInEvidenceFrom(Answer other) {
    return !evidence.weighsSame(other.evidence) || !retrofits.equals(other.retrofits);
  }

  private boolean stretchesSame(List<Stretch> others) {
    if (stretches.size() != others.size()) {
      return false;
    }
    for (int i = 0; i < stretches.size(); i++) {
      if (stretches.get(i).answer().differsFrom(others.get(i).answer())) {
        return false;
      }
    }
    return true;
  }

  private static boolean offersSame(List<Possible> ours, List<Possible> theirs) {
    if (ours.size() != theirs.size()) {
      return false;
    }
    for (int i = 0; i < ours.size(); i++) {
      if (!ours.get(i).offersSame(theirs.get(i))) {
        return false;
      }
    }
    return true;
  }
}
