package club.yearline.estimation;

/**
 * Where a transition most probably began and ended: the ordinals of the pairs of greatest chance,
 * of which the first of a pair is always below the second.
 *
 * @param first the first new ones
 * @param settled from where all are new
 */
public record WindowStretches(Bounds first, Bounds settled) {}
