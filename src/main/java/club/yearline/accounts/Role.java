package club.yearline.accounts;

/** What a person may do here; each role may also do what those before it may. */
public enum Role {
  /** A club member: registers airframes, records observations, proposes corrections. */
  MEMBER,
  /** An appointed member who also decides on the corrections of others. */
  MODERATOR,
  /** Who runs the installation: accounts, roles, import, settings. */
  KEEPER;

  /** Whether this role may do what the given one may. */
  public boolean atLeast(Role other) {
    return compareTo(other) >= 0;
  }
}
