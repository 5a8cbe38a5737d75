package club.yearline.effectivity;

/**
 * Neighbouring years of a variant's production with one answer.
 *
 * @param firstYear first year, inclusive
 * @param lastYear last year, inclusive
 * @param answer the answer for each of them
 */
public record YearSpan(int firstYear, int lastYear, Answer answer) {}
