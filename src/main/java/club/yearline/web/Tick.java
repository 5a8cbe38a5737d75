package club.yearline.web;

/**
 * A mark on a year axis.
 *
 * @param x where it stands
 * @param year the year that begins there
 * @param major whether it is labelled
 */
public record Tick(double x, int year, boolean major) {}
