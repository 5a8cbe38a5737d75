package club.yearline.accounts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.springframework.security.crypto.argon2.Argon2PasswordEncoder;

class HashingTest {

  private final Hashing hashing = new Hashing(1);

  @Test
  void hashesAreArgon2idAndSalted() {
    String hash = hashing.hash("hangar doors face the wind");
    assertThat(hash).startsWith("$argon2id$v=19$m=19456,t=2,p=1$");
    assertThat(hashing.hash("hangar doors face the wind")).isNotEqualTo(hash);
    assertThat(hashing.matches("hangar doors face the wind", hash)).isTrue();
    assertThat(hashing.matches("Hangar doors face the wind", hash)).isFalse();
    assertThat(hashing.matches("hangar doors face the wind", null)).isFalse();
  }

  @Test
  void theSameLettersInAnotherCompositionAreTheSamePassword() {
    String hash = hashing.hash("caf\u00e9 am Rollweg A");
    assertThat(hashing.matches("cafe\u0301 am Rollweg A", hash)).isTrue();
  }

  @Test
  void everyCharacterCounts() {
    String hash = hashing.hash("x".repeat(100) + "a");
    assertThat(hashing.matches("x".repeat(100) + "b", hash)).isFalse();
  }

  @Test
  void aHashOfWeakerParametersIsOutdated() {
    assertThat(hashing.isOutdated(hashing.hash("whatever it may be"))).isFalse();
    String weak = new Argon2PasswordEncoder(16, 32, 1, 4096, 1).encode("whatever it may be");
    assertThat(hashing.isOutdated(weak)).isTrue();
    assertThat(hashing.matches("whatever it may be", weak)).isTrue();
  }

  /** One works, sixteen wait, and whoever comes then is told to come back. */
  @Test
  void aFloodIsTurnedAwayInsteadOfQueued() throws Exception {
    CountDownLatch working = new CountDownLatch(1);
    CountDownLatch done = new CountDownLatch(1);
    AtomicInteger atOnce = new AtomicInteger();
    ExecutorService crowd = Executors.newCachedThreadPool();
    try {
      crowd.execute(() -> hashing.inTurn(() -> work(working, done)));
      working.await();
      for (int i = 0; i < 16; i++) {
        crowd.execute(() -> hashing.inTurn(atOnce::incrementAndGet));
      }
      while (hashing.waiting() < 17) {
        Thread.onSpinWait();
      }
      assertThatThrownBy(() -> hashing.hash("one more")).isInstanceOf(Hashing.Busy.class);
      assertThat(atOnce).hasValue(0);
    } finally {
      done.countDown();
      crowd.shutdown();
    }
  }

  private static boolean work(CountDownLatch working, CountDownLatch done) {
    working.countDown();
    try {
      done.await();
      return true;
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }
}
