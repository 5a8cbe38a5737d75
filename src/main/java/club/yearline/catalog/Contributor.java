package club.yearline.catalog;

import org.jspecify.annotations.Nullable;

/**
 * Who proposed or approved a revision. Somebody with an account is kept by number only, because a
 * published row never changes and a name can be taken back.
 *
 * @param person number of the account; null where there is none
 * @param name the name, where there is no account; null where nobody is recorded
 */
public record Contributor(@Nullable Long person, @Nullable String name) {

  /** Nobody recorded. */
  public static final Contributor NOBODY = new Contributor(null, null);

  /** Somebody without an account. */
  public static Contributor named(@Nullable String name) {
    return new Contributor(null, name);
  }

  /** Somebody with an account. */
  public static Contributor person(long id) {
    return new Contributor(id, null);
  }
}
