package club.yearline.effectivity;

import org.jspecify.annotations.Nullable;

/**
 * One end of a cut-in's window.
 *
 * @param year the year recorded for it
 * @param series the series of its serial
 * @param serial the serial recorded for it
 * @param serialYear the year of that serial by the variant's blocks
 */
record End(
    @Nullable Integer year,
    @Nullable Series series,
    @Nullable Serial serial,
    @Nullable Integer serialYear) {

  /** The year by which ends are ranked: the recorded one, else that of the serial. */
  @Nullable Integer rankYear() {
    return year != null ? year : serialYear;
  }

  /** On which side a position lies; domain section 4, "How a change stands to a position". */
  Side side(Position position, int[] years) {
    if (serial != null && series != null && position.serial() != null && position.isIn(series)) {
      return Side.of(position.serial().isBelow(serial));
    }
    Integer asked = position.year();
    if (asked != null) {
      return sideOf(asked);
    }
    Side agreed = years.length == 0 ? Side.UNDECIDED : sideOf(years[0]);
    for (int year : years) {
      agreed = agreed.and(sideOf(year));
    }
    return agreed;
  }

  private Side sideOf(int asked) {
    if (year != null) {
      return Side.of(asked < year);
    }
    if (serialYear == null || serialYear == asked) {
      return Side.UNDECIDED;
    }
    return Side.of(asked < serialYear);
  }
}
