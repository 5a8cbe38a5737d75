package club.yearline.testing;

import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Records;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;

/**
 * Checks laws on random catalogues and lists. A failure names its seed, which {@code
 * -Dyearline.seed=SEED} replays alone, and the smallest part that still fails.
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

  /** Something that holds for every list of things. */
  @FunctionalInterface
  public interface ListLaw<T> {
    /**
     * Throws if the law is broken.
     *
     * @param dice for choices of the law's own; they follow from the seed, however often it is
     *     checked
     */
    void check(List<T> things, Dice dice);
  }

  /**
   * Checks a law on the lists that are made for the seeds from 0 to {@code count - 1}; a list that
   * breaks it is made small.
   */
  public static <T> void check(int count, Function<Dice, List<T>> make, ListLaw<T> law) {
    seeds(count).forEach(seed -> check(seed, make.apply(new Dice(seed)), law));
  }

  private static <T> void check(long seed, List<T> things, ListLaw<T> law) {
    Throwable failure = failure(() -> law.check(things, new Dice(seed)));
    if (failure == null) {
      return;
    }
    List<T> small =
        Shrinking.list(
            things,
            part -> {
              Throwable again = failure(() -> law.check(part, new Dice(seed)));
              return again != null && again.getClass() == failure.getClass();
            });
    String message = message(seed, small.stream().map(String::valueOf).toList());
    throw new AssertionError(message, failure(() -> law.check(small, new Dice(seed))));
  }

  /** Checks a law on the random catalogues of the seeds from 0 to {@code count - 1}. */
  public static void check(int count, Law law) {
    seeds(count).forEach(seed -> check(seed, law));
  }

  private static LongStream seeds(int count) {
    return Long.getLong(REPLAY) == null
        ? LongStream.range(0, count)
        : LongStream.of(Long.getLong(REPLAY));
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
    throw new AssertionError(
        message(seed, small.entries().stream().map(Entry::toString).toList()),
        failure(small, seed, law));
  }

  private static @Nullable Throwable failure(Records records, long seed, Law law) {
    return failure(() -> law.check(records, new Dice(seed)));
  }

  private static @Nullable Throwable failure(Runnable check) {
    try {
      check.run();
      return null;
    } catch (RuntimeException | AssertionError e) {
      return e;
    }
  }

  private static String message(long seed, List<String> small) {
    return small.stream()
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
