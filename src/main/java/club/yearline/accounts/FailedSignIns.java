package club.yearline.accounts;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Slows down guessing at one account, across all instances. An attempt is counted before it is
 * judged, so that many at once gain nothing; success forgets them. The wait grows to a quarter of
 * an hour and never to a lock; a browser that has signed in before is counted apart, so that nobody
 * else can slow its owner down.
 */
@Repository
class FailedSignIns {

  /** So many slips are free. */
  private static final int FREE = 5;

  private static final Duration FIRST_WAIT = Duration.ofSeconds(15);
  private static final Duration LONGEST_WAIT = Duration.ofMinutes(15);

  /** Doubling beyond this would overflow long after the longest wait is reached. */
  private static final int MOST_DOUBLINGS = 10;

  private static final Duration FORGOTTEN_AFTER = Duration.ofDays(1);

  private static final int TRIES = 5;

  private final JdbcClient jdbc;

  FailedSignIns(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  private record Count(int failures, Instant waitUntil) {}

  /**
   * Counts an attempt.
   *
   * @return zero if it may be judged, otherwise how long to wait
   */
  Duration count(String key) {
    String hash = Secret.hash(key);
    for (int i = 0; i < TRIES; i++) {
      Instant now = Instant.now();
      Optional<Count> seen = find(hash);
      if (seen.isPresent() && seen.get().waitUntil().isAfter(now)) {
        return Duration.between(now, seen.get().waitUntil()).plusSeconds(1);
      }
      if (seen.isPresent() ? countedOn(hash, seen.get(), now) : countedFirst(hash, now)) {
        return Duration.ZERO;
      }
    }
    // Others count at this very moment, and more often than a person could.
    return FIRST_WAIT;
  }

  void forget(String key) {
    jdbc.sql("delete from failed_sign_in where hash = :hash")
        .param("hash", Secret.hash(key))
        .update();
  }

  void forgetOld() {
    jdbc.sql("delete from failed_sign_in where last_at < :old")
        .param("old", Instant.now().minus(FORGOTTEN_AFTER).atOffset(ZoneOffset.UTC))
        .update();
  }

  static Duration waitAfter(int failures) {
    if (failures < FREE) {
      return Duration.ZERO;
    }
    Duration wait = FIRST_WAIT.multipliedBy(1L << Math.min(failures - FREE, MOST_DOUBLINGS));
    return wait.compareTo(LONGEST_WAIT) < 0 ? wait : LONGEST_WAIT;
  }

  private Optional<Count> find(String hash) {
    return jdbc.sql("select failures, wait_until from failed_sign_in where hash = :hash")
        .param("hash", hash)
        .query(FailedSignIns::row)
        .optional();
  }

  private boolean countedOn(String hash, Count seen, Instant now) {
    int failures = seen.failures() + 1;
    return jdbc.sql(
                """
                update failed_sign_in set failures = :failures, last_at = :now, wait_until = :until
                where hash = :hash and failures = :seen
                """)
            .param("failures", failures)
            .param("now", now.atOffset(ZoneOffset.UTC))
            .param("until", now.plus(waitAfter(failures)).atOffset(ZoneOffset.UTC))
            .param("hash", hash)
            .param("seen", seen.failures())
            .update()
        == 1;
  }

  private boolean countedFirst(String hash, Instant now) {
    try {
      jdbc.sql(
              """
              insert into failed_sign_in (hash, failures, last_at, wait_until)
              values (:hash, 1, :now, :now)
              """)
          .param("hash", hash)
          .param("now", now.atOffset(ZoneOffset.UTC))
          .update();
      return true;
    } catch (DuplicateKeyException e) {
      // Another attempt was the first: count on from that.
      return false;
    }
  }

  private static Count row(ResultSet row, int number) throws SQLException {
    return new Count(row.getInt("failures"), Accounts.instantOf(row, "wait_until"));
  }
}
