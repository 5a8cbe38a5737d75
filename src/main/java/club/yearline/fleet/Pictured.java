package club.yearline.fleet;

/**
 * A photograph as a list or a report shows it.
 *
 * @param feature key of the feature that it shows
 * @param small a small JPEG of it
 */
public record Pictured(String feature, byte[] small) {}
