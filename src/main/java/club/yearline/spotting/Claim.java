package club.yearline.spotting;

import club.yearline.effectivity.Position;
import club.yearline.effectivity.Variant;
import org.jspecify.annotations.Nullable;

/**
 * What an airframe is said to be. Immutable.
 *
 * @param variant the variant
 * @param position its place in the variant's production; null where neither year nor serial is
 *     claimed
 */
public record Claim(Variant variant, @Nullable Position position) {

  /** A claim of a position: a year, a serial or both. */
  public static Claim of(Position position) {
    return new Claim(position.variant(), position);
  }

  /** A claim of a variant alone. */
  public static Claim of(Variant variant) {
    return new Claim(variant, null);
  }

  /** The year claimed; null for none. */
  public @Nullable Integer year() {
    return position == null ? null : position.year();
  }

  boolean hasSerial() {
    return position != null && position.serial() != null;
  }

  /** Whether the pair is part of the claim: its year or, without one, any of the variant's. */
  boolean holds(Pair pair) {
    Integer year = year();
    return pair.variant().key().equals(variant.key()) && (year == null || year == pair.year());
  }
}
