package club.yearline.effectivity;

import org.jspecify.annotations.Nullable;

/**
 * An unbroken stretch of years in which a variant was produced.
 *
 * @param firstYear first year, inclusive
 * @param lastYear last year, inclusive; null: still in production
 * @param built airframes built in this run; null where not recorded
 */
public record ProductionRun(int firstYear, @Nullable Integer lastYear, @Nullable Integer built) {

  /** Whether the variant was produced in the given year. */
  public boolean covers(int year) {
    return firstYear <= year && (lastYear == null || year <= lastYear);
  }
}
