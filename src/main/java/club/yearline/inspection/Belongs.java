package club.yearline.inspection;

import club.yearline.effectivity.Variant;

/**
 * Years of a variant, each produced, in which a value left the factory.
 *
 * @param variant the variant
 * @param firstYear the first of them
 * @param lastYear the last of them; all years between are among them
 */
public record Belongs(Variant variant, int firstYear, int lastYear) {}
