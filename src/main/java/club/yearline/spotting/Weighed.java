package club.yearline.spotting;

import java.util.List;
import java.util.Optional;

/**
 * A claim against the other pairs of its family. Immutable.
 *
 * @param share the claim's posterior probability, 0 to 1; of all the variant's years together where
 *     no year is claimed (0 if the variant has no production run)
 * @param shares all pairs with their shares, which sum to 1, greatest first
 * @param bestOther the pair with the greatest share that is not part of the claim; empty where the
 *     family has no other
 */
public record Weighed(double share, List<Share> shares, Optional<Share> bestOther) {

  public Weighed {
    shares = List.copyOf(shares);
  }
}
