package club.yearline.spotting;

import club.yearline.effectivity.Variant;
import java.util.List;

/**
 * Neighbouring years of a variant that nothing seen so far tells apart. Immutable.
 *
 * @param variant the variant
 * @param years its years, ascending without a gap, each with its share
 * @param share their shares together, 0 to 1
 * @param speakingFor observations at least twice as likely here as on the prior-weighted mean
 * @param speakingAgainst observations at most half as likely here as on that mean
 * @param exchanged observations that no airframe of these years left the factory with
 */
public record RankedSpan(
    Variant variant,
    List<Share> years,
    double share,
    List<Seen> speakingFor,
    List<Seen> speakingAgainst,
    List<Seen> exchanged) {

  public RankedSpan {
    years = List.copyOf(years);
    speakingFor = List.copyOf(speakingFor);
    speakingAgainst = List.copyOf(speakingAgainst);
    exchanged = List.copyOf(exchanged);
  }

  /** The first year. */
  public int firstYear() {
    return years.get(0).pair().year();
  }

  /** The last year. */
  public int lastYear() {
    return years.get(years.size() - 1).pair().year();
  }

  /** The year with the greatest share, the earliest of equals. */
  public Share best() {
    return years.stream().reduce((a, b) -> b.share() > a.share() ? b : a).orElseThrow();
  }
}
