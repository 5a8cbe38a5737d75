package club.yearline.testing;

import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Records;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;

/**
 * Checks laws on random catalogues. A failure names its seed, which {@code -Dyearline.seed=SEED}
 * replays alone, and the smallest part of the catalogue that still fails.
 */
public final class Seeds {

  private static final String REPLAY = "yearline.seed";

  private Seeds() {}

  /** Something that holds for every catalogue. */
  @FunctionalInterface
  public interface Law {
    /**
     * Throws if the law is broken.
     *
     * @param dice for choices of the law's own; they follow from the seed, however often it is
     *     checked
     */
    void check(Records records, Dice dice);
  }

  /** Checks a law on the random catalogues of the seeds from 0 to {@code count - 1}. */
  public static void check(int count, Law law) {
    LongStream seeds =
        Long.getLong(REPLAY) == null
            ? LongStream.range(0, count)
            : LongStream.of(Long.getLong(REPLAY));
    seeds.forEach(seed -> check(seed, law));
  }

  private static void check(long seed, Law law) {
    Records records = Catalogues.random(seed);
    Throwable failure = failure(records, seed, law);
    if (failure == null) {
      return;
    }
    Class<?> kind = failure.getClass();
    Records small =
        Shrinking.of(
            records,
            part -> {
              Throwable again = failure(part, seed, law);
              return again != null && again.getClass() == kind;
            });
    throw new AssertionError(message(seed, small), failure(small, seed, law));
  }

  private static @Nullable Throwable failure(Records records, long seed, Law law) {
    try {
      law.check(records, new Dice(seed));
      return null;
    } catch (RuntimeException | AssertionError e) {
      return e;
    }
  }

  private static String message(long seed, Records small) {
    return small.entries().stream()
        .map(Entry::toString)
        .collect(
            Collectors.joining(
                "\n  ",
                "The law fails for seed "
                    + seed
                    + " (replay it with -D"
                    + REPLAY
                    + "="
                    + seed
                    + "). It still fails with only:\n  ",
                "\n"));
  }
}
