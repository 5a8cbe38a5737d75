package club.yearline.effectivity;

import java.util.Comparator;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/** A change at its place in one variant's timeline. */
record Step(Change change, CutIn cutIn, @Nullable End first, @Nullable End settled) {

  private static final Comparator<@Nullable Integer> ENDLESS_LAST =
      Comparator.nullsLast(Comparator.naturalOrder());
  private static final Comparator<@Nullable Integer> MISSING_FIRST =
      Comparator.nullsFirst(Comparator.naturalOrder());
  private static final Comparator<@Nullable Serial> NO_SERIAL_FIRST =
      Comparator.nullsFirst(Comparator.naturalOrder());

  /** The order of a feature's changes for a variant; domain section 4. */
  static final Comparator<Step> IN_ORDER =
      Comparator.comparing((Step s) -> !s.cutIn.atStart())
          .thenComparing(Step::rankYear, ENDLESS_LAST)
          .thenComparing(s -> s.rankSerial() != null)
          .thenComparing(
              s -> s.cutIn.series() == null || s.rankSerial() == null ? "" : s.cutIn.series())
          .thenComparing(Step::rankSerial, NO_SERIAL_FIRST)
          .thenComparing(s -> s.cutIn.firstYear(), MISSING_FIRST)
          .thenComparing(s -> s.first == null ? null : s.first.serial(), NO_SERIAL_FIRST)
          .thenComparing(s -> s.change.key());

  static Step of(Change change, CutIn cutIn, @Nullable Series series, Production production) {
    return new Step(
        change,
        cutIn,
        end(cutIn.firstYear(), series, cutIn.firstSerial(), production),
        end(cutIn.settledYear(), series, cutIn.settledSerial(), production));
  }

  private static @Nullable End end(
      @Nullable Integer year,
      @Nullable Series series,
      @Nullable String text,
      Production production) {
    if (text == null || series == null) {
      return year == null ? null : new End(year, null, null, null);
    }
    Serial serial = Block.readable(series, text);
    OptionalInt serialYear = production.yearOf(series, serial);
    return new End(year, series, serial, serialYear.isPresent() ? serialYear.getAsInt() : null);
  }

  /**
   * How the change stands to a position.
   *
   * @param previous how the change before it in the order stands; null for the first
   * @param years the years of the variant's runs
   */
  Standing standing(Position position, @Nullable Standing previous, int[] years) {
    if (cutIn.atStart()) {
      return Standing.AFTER;
    }
    Side ofSettled = settled == null ? Side.BELOW : settled.side(position, years);
    if (ofSettled == Side.AT_OR_ABOVE) {
      return Standing.AFTER;
    }
    Side ofFirst = first == null ? Side.AT_OR_ABOVE : first.side(position, years);
    if (ofFirst == Side.BELOW || (first == null && previous == Standing.BEFORE)) {
      return Standing.BEFORE;
    }
    boolean undecided = ofSettled == Side.UNDECIDED || ofFirst == Side.UNDECIDED;
    return undecided ? Standing.OPEN : Standing.INSIDE;
  }

  private @Nullable Integer rankYear() {
    Integer bySettled = settled == null ? null : settled.rankYear();
    if (bySettled != null) {
      return bySettled;
    }
    return first == null ? null : first.rankYear();
  }

  private @Nullable Serial rankSerial() {
    if (settled != null && settled.serial() != null) {
      return settled.serial();
    }
    return first == null ? null : first.serial();
  }
}
