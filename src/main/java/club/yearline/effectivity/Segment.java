package club.yearline.effectivity;

import org.jspecify.annotations.Nullable;

/**
 * Positions that cannot differ in their answer: a stretch of serials of one block, or one year
 * without blocks.
 *
 * @param position the first of them
 * @param end the serial after the last; null for a year
 */
record Segment(Position position, @Nullable Serial end) {}
