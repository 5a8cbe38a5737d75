package club.yearline.testing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Choices that follow from a seed alone. */
public final class Dice {

  private final Random random;

  public Dice(long seed) {
    this.random = new Random(seed);
  }

  public boolean chance(double share) {
    return random.nextDouble() < share;
  }

  /** A whole number from {@code low} to {@code high}, both included. */
  public int between(int low, int high) {
    return low + random.nextInt(high - low + 1);
  }

  public <T> T pick(List<T> from) {
    return from.get(random.nextInt(from.size()));
  }

  @SafeVarargs
  public final <T> T pick(T... from) {
    return from[random.nextInt(from.length)];
  }

  /** Distinct members in random order: at least {@code low}, at most {@code high}. */
  public <T> List<T> some(List<T> from, int low, int high) {
    List<T> shuffled = new ArrayList<>(from);
    Collections.shuffle(shuffled, random);
    return List.copyOf(shuffled.subList(0, Math.min(from.size(), between(low, high))));
  }

  /** The given thing, or null. */
  public <T> T maybe(double share, T thing) {
    return chance(share) ? thing : null;
  }
}
