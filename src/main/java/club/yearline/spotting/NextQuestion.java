package club.yearline.spotting;

import club.yearline.effectivity.Feature;

/**
 * A feature worth looking at next. Immutable.
 *
 * @param feature the feature
 * @param bits by how much the uncertainty about the pair is expected to drop: entropy in bits, 0 or
 *     more
 */
public record NextQuestion(Feature feature, double bits) {}
