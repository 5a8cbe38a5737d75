package club.yearline.effectivity;

import org.jspecify.annotations.Nullable;

/**
 * How a variant (the younger one, which holds this record) relates to an older one.
 *
 * @param from key of the older variant
 * @param relation how they relate
 * @param note plain text
 */
public record Descent(String from, Relation relation, @Nullable String note) {}
