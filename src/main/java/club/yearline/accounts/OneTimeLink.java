package club.yearline.accounts;

import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A link that works once.
 *
 * @param kind what it is good for
 * @param person whose account it is about; null where there is none yet
 * @param email where it was sent or who it is meant for; null where nobody said
 * @param madeBy who made it; null for the server itself
 * @param withoutSecondFactor whether using it also switches the second factor off
 */
record OneTimeLink(
    long id,
    Kind kind,
    @Nullable Long person,
    @Nullable String email,
    @Nullable Long madeBy,
    Instant madeAt,
    Instant expiresAt,
    boolean withoutSecondFactor) {

  /** What links are good for, where they lead and how long they last. */
  enum Kind {
    /** Whoever has it becomes a keeper: made by the server for who runs it. */
    SET_UP("/set-up/", Duration.ofHours(24)),
    INVITATION("/join/", Duration.ofDays(14)),
    /** Made for somebody by a keeper, or sent by mail. */
    RESET("/reset/", Duration.ofHours(24)),
    MAILED_RESET("/reset/", Duration.ofHours(1)),
    EMAIL("/account/email/", Duration.ofHours(24));

    private final String path;
    private final Duration lifetime;

    Kind(String path, Duration lifetime) {
      this.path = path;
      this.lifetime = lifetime;
    }

    Duration lifetime() {
      return lifetime;
    }

    /** Where the link with a secret leads. */
    String path(String secret) {
      return path + secret;
    }
  }
}
