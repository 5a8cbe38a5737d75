package club.yearline.effectivity;

/**
 * A stretch of serials of one series with one answer.
 *
 * @param series the series
 * @param first first serial, inclusive
 * @param last last serial, inclusive
 * @param airframes airframes of the variant and year in it; shared serials count in parts
 * @param answer the answer for each of its serials
 */
public record Stretch(Series series, Serial first, Serial last, double airframes, Answer answer) {

  /** The first serial as stamped. */
  public String firstText() {
    return series.show(first);
  }

  /** The last serial as stamped. */
  public String lastText() {
    return series.show(last);
  }
}
