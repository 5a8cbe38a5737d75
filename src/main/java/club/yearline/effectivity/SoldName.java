package club.yearline.effectivity;

import org.jspecify.annotations.Nullable;

/**
 * A name that a variant was sold under.
 *
 * @param name the name
 * @param firstYear first year sold under it; null where not recorded
 * @param lastYear last year sold under it; null: still
 */
public record SoldName(String name, @Nullable Integer firstYear, @Nullable Integer lastYear) {}
