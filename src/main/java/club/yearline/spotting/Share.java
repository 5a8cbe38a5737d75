package club.yearline.spotting;

/**
 * A pair's part of what is known. Immutable.
 *
 * @param pair the variant and year
 * @param share its posterior probability among the pairs considered, 0 to 1
 */
public record Share(Pair pair, double share) {}
