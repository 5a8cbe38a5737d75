package club.yearline.web;

import org.jspecify.annotations.Nullable;

/**
 * A stretch of a drawing's row.
 *
 * @param x left edge
 * @param y upper edge
 * @param width width
 * @param height height
 * @param state settled, transition, open, splits, unrecorded or option: decides the pattern
 * @param label what it says, in words
 * @param href where it leads; null where it leads nowhere
 */
public record Bar(
    double x,
    double y,
    double width,
    double height,
    String state,
    String label,
    @Nullable String href) {}
