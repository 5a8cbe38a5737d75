package club.yearline.accounts;

/**
 * A link beside the name of who is signed in. Each module declares its own as a bean.
 *
 * @param path the address, such as {@code /inbox}
 * @param label key of its name in a message bundle
 * @param order where it stands: lower first
 * @param least the role from which on it is shown
 */
public record DeskLink(String path, String label, int order, Role least) {}
