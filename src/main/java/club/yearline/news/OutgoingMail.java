package club.yearline.news;

/**
 * A mail that waits to be sent.
 *
 * @param id its number
 * @param person whom it is for
 * @param digest whether it gathers the messages of a day
 * @param tries how often sending was tried
 */
record OutgoingMail(long id, long person, boolean digest, int tries) {}
