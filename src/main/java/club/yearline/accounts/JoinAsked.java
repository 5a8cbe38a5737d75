package club.yearline.accounts;

/**
 * Somebody asks to join. Told inside the transaction that stores the request.
 *
 * @param request number of the request
 */
public record JoinAsked(long request) {}
