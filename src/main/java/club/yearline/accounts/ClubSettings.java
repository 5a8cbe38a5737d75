package club.yearline.accounts;

/**
 * What the keeper has decided for the club.
 *
 * @param name the club's name; empty where none was given
 * @param closed whether only members may read the catalogue
 * @param singleKeeper whether a correction may be decided on by who proposed it
 * @param joinRequests whether visitors may ask to join
 * @param logDays for how many days security events are kept
 * @param version counts the changes of the settings
 */
record ClubSettings(
    String name,
    boolean closed,
    boolean singleKeeper,
    boolean joinRequests,
    int logDays,
    int version) {

  /** As an installation starts. */
  static final ClubSettings FRESH = new ClubSettings("", false, false, false, 365, 0);
}
