package club.yearline.web;

/**
 * A section of the site that the header links to. Each module declares its own as a bean.
 *
 * @param path the address, such as {@code /expected}
 * @param label key of its name in a message bundle
 * @param order where it stands: lower first
 */
public record Section(String path, String label, int order) {}
