package club.yearline.effectivity;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * When and under which serials one variant was produced.
 *
 * <p>A run without a last year ends, for enumeration, at the latest year that any record names for
 * the variant: never at today's date, so that an answer at a revision stays the same.
 */
final class Production {

  private final String variant;
  private final List<ProductionRun> runs;
  private final List<Block> blocks;
  private final int[] years;

  private final Map<String, SeriesBlocks> neighbours;

  /**
   * Gathers one variant's production.
   *
   * @param neighbours the blocks of all variants, by series
   * @param latestNamedYear the latest year that any record names for the variant
   */
  Production(Variant variant, Map<String, SeriesBlocks> neighbours, int latestNamedYear) {
    this.variant = variant.key();
    this.neighbours = neighbours;
    this.runs =
        variant.runs().stream().sorted(Comparator.comparingInt(ProductionRun::firstYear)).toList();
    this.blocks =
        neighbours.values().stream()
            .flatMap(s -> s.all().stream())
            .filter(b -> b.entry().variant().equals(variant.key()))
            .sorted(Block.BY_SERIES)
            .toList();
    this.years =
        runs.stream()
            .flatMapToInt(r -> IntStream.rangeClosed(r.firstYear(), lastYear(r, latestNamedYear)))
            .sorted()
            .distinct()
            .toArray();
  }

  private static int lastYear(ProductionRun run, int latestNamedYear) {
    return run.lastYear() == null ? Math.max(run.firstYear(), latestNamedYear) : run.lastYear();
  }

  List<ProductionRun> runs() {
    return runs;
  }

  /** The variant's blocks, by series and serial. */
  List<Block> blocks() {
    return blocks;
  }

  /** The blocks of a series, of all variants. */
  List<Block> neighbours(Series series) {
    SeriesBlocks all = neighbours.get(series.key());
    return all == null ? List.of() : all.all();
  }

  /** The years of all runs, ascending, each once. */
  int[] years() {
    return years.clone();
  }

  /** The years, not to be written to: for the comparisons that run through them often. */
  int[] sharedYears() {
    return years;
  }

  boolean covers(int year) {
    for (ProductionRun run : runs) {
      if (run.covers(year)) {
        return true;
      }
    }
    return false;
  }

  /** The blocks of a year; of no year, for null. */
  List<Block> blocksOf(@Nullable Integer year) {
    return blocks.stream().filter(b -> Objects.equals(b.year(), year)).toList();
  }

  /** The airframes in {@code [from, to)} that the variant's blocks of the year hold. */
  double airframes(Series series, Serial from, Serial to, @Nullable Integer year) {
    SeriesBlocks all = neighbours.get(series.key());
    return all == null
        ? 0
        : all.airframes(
            from, to, b -> b.entry().variant().equals(variant) && Objects.equals(b.year(), year));
  }

  /** The airframes that the variant's blocks of the year hold; of no year, for null. */
  double airframes(@Nullable Integer year) {
    return blocksOf(year).stream()
        .mapToDouble(
            own -> {
              SeriesBlocks all = neighbours.get(own.series().key());
              return all == null ? 0 : all.airframes(own.first(), own.end(), own::equals);
            })
        .sum();
  }

  /** The nearest produced year before the given one. */
  OptionalInt yearBefore(int year) {
    return IntStream.of(years).filter(y -> y < year).max();
  }

  /** The nearest produced year after the given one. */
  OptionalInt yearAfter(int year) {
    return IntStream.of(years).filter(y -> y > year).min();
  }

  /**
   * The year of a serial for comparing it with years: that of the block that holds it or, failing
   * that, of the next block above, among the variant's blocks of the series that have a year.
   */
  OptionalInt yearOf(Series series, Serial serial) {
    for (Block block : blocks) {
      if (block.year() != null
          && block.series().key().equals(series.key())
          && (block.holds(serial) || serial.isBelow(block.first()))) {
        return OptionalInt.of(block.year());
      }
    }
    return OptionalInt.empty();
  }
}
