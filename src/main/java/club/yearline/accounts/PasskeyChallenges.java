package club.yearline.accounts;

import java.time.Duration;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.web.webauthn.api.Bytes;
import org.springframework.stereotype.Repository;

/**
 * The questions put to devices. Each is taken once, whatever instance asked and however many
 * answers come at one moment, and only from the browser that was asked, for what it was asked.
 */
@Repository
class PasskeyChallenges {

  /** Longer than a device waits for its owner. */
  static final Duration GOOD_FOR = Duration.ofMinutes(10);

  private final JdbcClient jdbc;

  PasskeyChallenges(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /**
   * A new question.
   *
   * @param purpose what the answer will be used for, and for whom
   * @param browser what only the asked browser brings
   */
  Bytes ask(String purpose, String browser) {
    Bytes challenge = Bytes.random();
    jdbc.sql("insert into passkey_challenge (hash, expires_at) values (:hash, :until)")
        .param("hash", hash(challenge, purpose, browser))
        .param("until", Accounts.now().plus(GOOD_FOR))
        .update();
    return challenge;
  }

  /** Whether the question was asked, for this, of this browser; if so, it is spent. */
  boolean take(Bytes challenge, String purpose, String browser) {
    return jdbc.sql("delete from passkey_challenge where hash = :hash and expires_at > :now")
            .param("hash", hash(challenge, purpose, browser))
            .param("now", Accounts.now())
            .update()
        == 1;
  }

  void forgetOld() {
    jdbc.sql("delete from passkey_challenge where expires_at < :now")
        .param("now", Accounts.now())
        .update();
  }

  private static String hash(Bytes challenge, String purpose, String browser) {
    return Secret.hash(challenge.toBase64UrlString() + " " + purpose + " " + browser);
  }
}
