package club.yearline.effectivity;

import org.jspecify.annotations.Nullable;

/**
 * What is asked: a variant and a year, a serial alone, or all three.
 *
 * @param variant key of the variant
 * @param year model year or year of manufacture
 * @param serial the serial as typed
 */
public record Question(@Nullable String variant, @Nullable Integer year, @Nullable String serial) {}
