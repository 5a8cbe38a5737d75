package club.yearline.effectivity;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** One variant, compiled: its production and the timeline of each of its features. Immutable. */
public final class VariantModel {

  private final Family family;
  private final Variant variant;
  private final Production production;
  private final Map<String, Timeline> timelines;
  private final List<Timeline> ordered;

  /**
   * Holds what was compiled.
   *
   * @param timelines by feature key, in the order of {@link #timelines}
   */
  VariantModel(
      Family family, Variant variant, Production production, Map<String, Timeline> timelines) {
    this.family = family;
    this.variant = variant;
    this.production = production;
    this.timelines = timelines;
    this.ordered = List.copyOf(timelines.values());
  }

  /** The family. */
  public Family family() {
    return family;
  }

  /** The variant. */
  public Variant variant() {
    return variant;
  }

  /** Its production runs, by first year. */
  public List<ProductionRun> runs() {
    return production.runs();
  }

  /**
   * The years in which it was produced, ascending; a run without a last year counts as ending at
   * the latest year that any record names for the variant.
   */
  public int[] years() {
    return production.years();
  }

  /** Whether it was produced in the year; a run without a last year covers all later years. */
  public boolean produced(int year) {
    return production.covers(year);
  }

  /** The nearest produced year before the given one. */
  public OptionalInt yearBefore(int year) {
    return production.yearBefore(year);
  }

  /** The nearest produced year after the given one. */
  public OptionalInt yearAfter(int year) {
    return production.yearAfter(year);
  }

  /** Its serial blocks, by series and serial. */
  public List<SerialBlock> blocks() {
    return production.blocks().stream().map(Block::entry).toList();
  }

  /**
   * The airframes that its blocks of a year hold (of no year, for null); serials shared by
   * intermixed blocks count in equal parts in each.
   */
  public double airframes(@Nullable Integer year) {
    return production.airframes(year);
  }

  /**
   * The ordinals that its blocks of a series reach over, from the lowest to one past the highest; a
   * block without a last serial ends at the highest that any record names. Empty without a block.
   *
   * @param year only blocks of this year; null for all blocks, with a year or without
   */
  public Optional<OrdinalSpan> ordinals(Series series, @Nullable Integer year) {
    return production.blocks().stream()
        .filter(b -> b.series().key().equals(series.key()))
        .filter(b -> year == null || year.equals(b.year()))
        .map(b -> new OrdinalSpan(b.first().ordinal(), b.end().plainFloor()))
        .reduce(OrdinalSpan::with);
  }

  /** The position of a serial, in the year of its block that holds it, where one does. */
  public Position at(Series series, Serial serial) {
    for (Block block : production.blocks()) {
      if (block.series().key().equals(series.key()) && block.holds(serial)) {
        return Position.of(variant, block.year(), series, serial);
      }
    }
    return Position.of(variant, null, series, serial);
  }

  /** Whether its blocks or cut-ins use the series. */
  public boolean uses(Series series) {
    return Stream.concat(
            production.blocks().stream().map(b -> b.series().key()),
            ordered.stream().flatMap(t -> t.steps().stream()).map(s -> s.cutIn().series()))
        .anyMatch(series.key()::equals);
  }

  /** The timelines of the features that belong to it, by chapter, then name. */
  public List<Timeline> timelines() {
    return ordered;
  }

  /** The timeline of a feature; empty where the feature does not belong to the variant. */
  public Optional<Timeline> timeline(String feature) {
    return Optional.ofNullable(timelines.get(feature));
  }

  /** The expected configuration: one answer for each of its features, by chapter, then name. */
  public List<Answer> expected(Position position) {
    Answer[] answers = new Answer[ordered.size()];
    for (int i = 0; i < answers.length; i++) {
      answers[i] = ordered.get(i).at(position);
    }
    return List.of(answers);
  }

  Production production() {
    return production;
  }
}
