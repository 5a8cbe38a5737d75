package club.yearline.spotting;

import java.util.List;

/**
 * A pair with its share and what speaks for and against it. Immutable.
 *
 * @param pair the variant and year
 * @param share its posterior probability among the pairs considered, 0 to 1
 * @param speakingFor observations at least twice as likely here as on the prior-weighted mean
 * @param speakingAgainst observations at most half as likely here as on that mean
 */
public record Ranked(Pair pair, double share, List<Seen> speakingFor, List<Seen> speakingAgainst) {

  public Ranked {
    speakingFor = List.copyOf(speakingFor);
    speakingAgainst = List.copyOf(speakingAgainst);
  }
}
