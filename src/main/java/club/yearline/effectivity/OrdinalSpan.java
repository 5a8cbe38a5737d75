package club.yearline.effectivity;

/**
 * A reach of ordinals.
 *
 * @param first the lowest
 * @param end one past the highest
 */
public record OrdinalSpan(long first, long end) {

  OrdinalSpan with(OrdinalSpan other) {
    return new OrdinalSpan(Math.min(first, other.first), Math.max(end, other.end));
  }
}
