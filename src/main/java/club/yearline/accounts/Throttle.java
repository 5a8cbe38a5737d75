package club.yearline.accounts;

import club.yearline.web.Refusal;
import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.github.bucket4j.Bucket;
import java.time.Duration;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;

/**
 * Keeps anybody from doing something too often: per instance, in bounded memory. What has been
 * spent comes back evenly over the period.
 */
@Component
public class Throttle {

  private static final int MOST_WATCHED = 20_000;

  private static final Duration FORGOTTEN_AFTER = Duration.ofHours(2);

  private final Cache<String, Bucket> buckets =
      Caffeine.newBuilder().maximumSize(MOST_WATCHED).expireAfterAccess(FORGOTTEN_AFTER).build();

  /**
   * Whether somebody may do something once more; if so, that has been counted.
   *
   * @param what what is done, such as {@code submit}
   * @param who whoever does it: an id, a network
   * @param times how often it may be done
   * @param period in which time, an hour at most
   */
  public boolean allows(String what, Object who, int times, Duration period) {
    return buckets.get(what + " " + who, key -> bucket(times, period)).tryConsume(1);
  }

  /**
   * Counts one more time.
   *
   * @param what what is done, such as {@code submit}
   * @param who whoever does it: an id, a network
   * @param anHour how often it may be done in an hour
   * @throws Refusal if that was too often
   */
  public void require(String what, Object who, int anHour) {
    if (!allows(what, who, anHour, Duration.ofHours(1))) {
      throw Refusal.of(HttpStatus.TOO_MANY_REQUESTS, "too-often");
    }
  }

  private static Bucket bucket(int times, Duration period) {
    return Bucket.builder()
        .addLimit(limit -> limit.capacity(times).refillGreedy(times, period))
        .build();
  }
}
