package club.yearline.accounts;

import java.text.Normalizer;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.security.crypto.argon2.Argon2PasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;
import org.springframework.web.ErrorResponseException;

/**
 * Hashes passwords with Argon2id. A hash is meant to cost much, so only few are made at once and
 * only some may wait for their turn: however many try to sign in, readers keep the processor.
 */
@Component
class Hashing {

  private static final int SALT_BYTES = 16;
  private static final int HASH_BYTES = 32;
  private static final int LANES = 1;
  private static final int MEMORY_KIB = 19 * 1024;
  private static final int PASSES = 2;

  /** Who waits longer than a moment is better told to come back. */
  private static final int MOST_WAITING = 16;

  private static final long PATIENCE_SECONDS = 5;

  private final PasswordEncoder encoder;
  private final Semaphore turns;
  private final Semaphore queue;
  private final int places;
  private final String nobody;

  Hashing() {
    this(Math.max(1, Runtime.getRuntime().availableProcessors() / 2));
  }

  Hashing(int atOnce) {
    encoder = new Argon2PasswordEncoder(SALT_BYTES, HASH_BYTES, LANES, MEMORY_KIB, PASSES);
    turns = new Semaphore(atOnce, true);
    places = atOnce + MOST_WAITING;
    queue = new Semaphore(places);
    nobody = required(encoder.encode("nobody has this password"));
  }

  /** Too many want to sign in at this moment. */
  static final class Busy extends ErrorResponseException {

    private static final long serialVersionUID = 1L;

    Busy() {
      super(HttpStatus.SERVICE_UNAVAILABLE);
    }
  }

  String hash(String password) {
    return inTurn(() -> required(encoder.encode(normal(password))));
  }

  /** Whether a password is the right one; takes as long where there is no account at all. */
  boolean matches(String password, @Nullable String hash) {
    String against = hash == null ? nobody : hash;
    return inTurn(() -> encoder.matches(normal(password), against)) && hash != null;
  }

  /** Whether a hash was made with weaker parameters than today's. */
  boolean isOutdated(String hash) {
    return encoder.upgradeEncoding(hash);
  }

  /** How many are at work or wait for their turn. */
  int waiting() {
    return places - queue.availablePermits();
  }

  /** The same letters typed on another device may be other code points. */
  private static String normal(String password) {
    return Normalizer.normalize(password, Normalizer.Form.NFKC);
  }

  <T> T inTurn(Supplier<T> work) {
    if (!queue.tryAcquire()) {
      throw new Busy();
    }
    try {
      if (!turns.tryAcquire(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        throw new Busy();
      }
      try {
        return work.get();
      } finally {
        turns.release();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new Busy();
    } finally {
      queue.release();
    }
  }

  private static String required(@Nullable String encoded) {
    if (encoded == null) {
      throw new IllegalStateException("The encoder gave no hash");
    }
    return encoded;
  }
}
