package club.yearline.quiz;

import java.util.ArrayList;
import java.util.List;

/**
 * Choices that follow from a number, on every machine and for ever: the generator SplitMix64,
 * written out so that no library can change it. A number below a bound is the unsigned remainder;
 * lists are shuffled from the end (Fisher and Yates).
 */
final class Draws {

  private static final long STEP = 0x9E3779B97F4A7C15L;
  private static final long FIRST_FACTOR = 0xBF58476D1CE4E5B9L;
  private static final long SECOND_FACTOR = 0x94D049BB133111EBL;

  private long state;

  Draws(long number) {
    this.state = number;
  }

  /** The next 64 bits. */
  long next() {
    state += STEP;
    long z = state;
    z = (z ^ (z >>> 30)) * FIRST_FACTOR;
    z = (z ^ (z >>> 27)) * SECOND_FACTOR;
    return z ^ (z >>> 31);
  }

  /** A whole number from 0 to below the bound. */
  long below(long bound) {
    return Long.remainderUnsigned(next(), bound);
  }

  <T> T pick(List<T> from) {
    return from.get((int) below(from.size()));
  }

  /** The same things in another order. */
  <T> List<T> shuffled(List<T> things) {
    List<T> list = new ArrayList<>(things);
    for (int i = list.size() - 1; i > 0; i--) {
      int j = (int) below(i + 1L);
      T kept = list.get(i);
      list.set(i, list.get(j));
      list.set(j, kept);
    }
    return list;
  }

  /** So many of the things, or all there are. */
  <T> List<T> some(List<T> from, int most) {
    List<T> list = shuffled(from);
    return list.subList(0, Math.min(most, list.size()));
  }
}
