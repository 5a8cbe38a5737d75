package club.yearline.accounts;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * An open account, as stored.
 *
 * @param id identity of the person
 * @param name as the person wants to be called
 * @param email where the person is reached, and the name to sign in with
 * @param password the hash of the password
 * @param role what the person may do
 * @param joined since when
 * @param totpSecret shared secret of the second factor, sealed; null where none was set up
 * @param totpSince since when the second factor is asked for; null where it is not
 */
record Account(
    long id,
    String name,
    String email,
    String password,
    Role role,
    Instant joined,
    @Nullable String totpSecret,
    @Nullable Instant totpSince) {

  /** Whether signing in takes a second factor. */
  public boolean hasSecondFactor() {
    return totpSecret != null && totpSince != null;
  }

  Actor actor() {
    return new Actor(id, name, role);
  }
}
