package club.yearline.accounts;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A passkey as its owner sees it.
 *
 * @param id stands for it in addresses
 * @param name as the owner calls it
 * @param created since when it opens the account
 * @param lastUsed when it last did; null if it never has
 */
record Passkey(long id, String name, Instant created, @Nullable Instant lastUsed) {

  static final int LONGEST_NAME = 60;
}
