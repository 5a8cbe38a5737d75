package club.yearline.accounts;

/**
 * The person who asks, as of this request. Controllers take it as a parameter: {@code Actor} where
 * somebody must be signed in, {@code @Nullable Actor} where it may be a visitor.
 *
 * @param id identity of the person, the same for ever
 * @param name as the person wants to be called
 * @param role what the person may do now
 */
public record Actor(long id, String name, Role role) {

  /** Whether the person may do what a role may. */
  public boolean isAtLeast(Role least) {
    return role.atLeast(least);
  }
}
