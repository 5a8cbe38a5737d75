package club.yearline.accounts;

/**
 * An account is being closed. Told inside the transaction, so that whatever was kept for the person
 * goes with it.
 *
 * @param person whose account it was
 */
public record AccountClosed(long person) {}
