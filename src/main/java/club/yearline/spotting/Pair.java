package club.yearline.spotting;

import club.yearline.effectivity.Variant;

/**
 * A variant and one year of its production. Immutable.
 *
 * @param variant the variant
 * @param year model year or year of manufacture, as its family counts
 */
public record Pair(Variant variant, int year) {

  /** Whether it is the pair of the given variant and year. */
  public boolean is(String variantKey, int otherYear) {
    return year == otherYear && variant.key().equals(variantKey);
  }
}
